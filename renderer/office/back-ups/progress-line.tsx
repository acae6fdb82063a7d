import { Button, Group, Progress, Stack, Text } from '@mantine/core';
import { IconPlayerStop } from '@tabler/icons-react';

interface ProgressLineProps {
  /** What is going on, as a sentence begins: `Copying the store`. */
  doing: string;
  /** From 0 to 1. */
  share: number;
  /** Null where it is too late. */
  onStop: (() => void) | null;
  stopping?: boolean;
}

/** How far a long work is, and the way to stop it. */
export function ProgressLine({ doing, share, onStop, stopping = false }: ProgressLineProps) {
  const percent = Math.floor(share * 100);
  return (
    <Stack gap="xs" maw="40rem">
      <Progress.Root size="xl" radius="sm">
        <Progress.Section value={percent} aria-label={doing} />
      </Progress.Root>
      <Group justify="space-between" mih={42}>
        <Text role="status">
          {doing}, {percent} %
        </Text>
        {onStop !== null && (
          <Button
            variant="default"
            leftSection={<IconPlayerStop size={18} aria-hidden />}
            loading={stopping}
            onClick={onStop}
          >
            Stop
          </Button>
        )}
      </Group>
    </Stack>
  );
}
