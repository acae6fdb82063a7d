import { IconCircleCheck, IconCircleDashed, IconInfoCircle } from '@tabler/icons-react';

interface SettledMarkProps {
  settled: boolean;
  /** Open to nobody, and no reason to be pleased either. */
  noted?: boolean;
}

/** Whether a matter of a list is settled: a shape, a colour and a word. */
export function SettledMark({ settled, noted = false }: SettledMarkProps) {
  const { Mark, says, color } = settled
    ? { Mark: IconCircleCheck, says: 'Settled:', color: 'var(--mantine-color-green-text)' }
    : noted
      ? { Mark: IconInfoCircle, says: 'Note:', color: 'var(--mantine-color-blue-text)' }
      : { Mark: IconCircleDashed, says: 'Open:', color: 'var(--mantine-color-orange-text)' };
  return <Mark aria-label={says} size={22} color={color} style={{ flexShrink: 0 }} />;
}
