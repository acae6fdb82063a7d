import { Button, Group, Text } from '@mantine/core';
import { IconEye, IconEyeOff } from '@tabler/icons-react';
import type { BillMargin } from '../../../shared/money/index.ts';
import { MarginWords } from './margin-words.tsx';
import { useMarginShown } from './use-margin-shown.ts';

/** The margin of the whole bill, hidden until it is asked for: a customer may be looking. */
export function MarginNote({ margin }: { margin: BillMargin }) {
  const [shown, setShown] = useMarginShown();
  const Icon = shown ? IconEyeOff : IconEye;
  return (
    <Group gap="xs" justify="flex-end">
      {shown && (
        <Text size="sm" fw={500}>
          <MarginWords margin={margin} />
        </Text>
      )}
      <Button
        variant="subtle"
        color="gray"
        size="compact-sm"
        aria-pressed={shown}
        leftSection={<Icon size={16} aria-hidden />}
        onClick={() => setShown(!shown)}
      >
        {shown ? 'Hide margins' : 'Show margins'}
      </Button>
    </Group>
  );
}
