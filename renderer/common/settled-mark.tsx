import { IconCircleCheck, IconCircleDashed } from '@tabler/icons-react';

/** Whether a matter of a list is settled: a shape, a colour and a word. */
export function SettledMark({ settled }: { settled: boolean }) {
  const Mark = settled ? IconCircleCheck : IconCircleDashed;
  return (
    <Mark
      aria-label={settled ? 'Settled:' : 'Open:'}
      size={22}
      color={settled ? 'var(--mantine-color-green-text)' : 'var(--mantine-color-orange-text)'}
      style={{ flexShrink: 0 }}
    />
  );
}
