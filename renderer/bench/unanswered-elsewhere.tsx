import { Alert, Button, Group, Text } from '@mantine/core';
import { asTyped } from '../../shared/work/bench/reading-in-words.ts';
import { FEATURE_LABELS } from '../../shared/work/features.ts';
import type { ReadingQueue } from './reading-queue.ts';
import type { Station } from './sheet-list.tsx';

/** Readings of other features that were not recorded because they wait for an answer. */
export function UnansweredElsewhere({
  queue,
  at,
  onGo,
}: {
  readonly queue: ReadingQueue;
  readonly at: Station;
  readonly onGo: (to: Station) => void;
}) {
  return [...queue.asked, ...queue.refused]
    .filter(({ input }) => input.feature !== at)
    .map(({ id, input }) => (
      <Alert key={id} color="yellow">
        <Group gap="sm" justify="space-between">
          <Text c="inherit">
            {FEATURE_LABELS[input.feature]}: {asTyped(input)} is not recorded yet, it waits for an
            answer.
          </Text>
          <Button variant="default" mih={44} onClick={() => onGo(input.feature)}>
            Answer it
          </Button>
        </Group>
      </Alert>
    ));
}
