import { Button, Stack, Text } from '@mantine/core';
import { IconGavel, IconHandStop } from '@tabler/icons-react';
import type { Decision, PartToDecide } from '../../../shared/contract/bench/index.ts';
import { useFormat } from '../../common/format.ts';
import classes from './decide.module.css';
import { decisionWords } from './decision-words.ts';

/** What stands on a part: the choice, why, who and when. */
export function Decided(props: {
  readonly part: PartToDecide;
  readonly decision: Decision;
  /** Null where the record is closed. */
  readonly onDecideAnew: (() => void) | null;
}) {
  const { part, decision, onDecideAnew } = props;
  const { instant } = useFormat();
  const Mark = decision.choice === 'stop' ? IconHandStop : IconGavel;
  return (
    <Stack gap="xs">
      <div className={classes.standing} data-choice={decision.choice}>
        <Mark size={24} aria-hidden style={{ flex: 'none' }} />
        <div>
          <Text fw={650}>{decisionWords(decision)}</Text>
          {decision.reason !== '' && <Text>{decision.reason}</Text>}
          <Text size="sm" c="dimmed">
            {decision.by}, {instant(decision.at)}
          </Text>
        </div>
      </div>
      {onDecideAnew !== null && (
        <Button
          variant="default"
          h={48}
          onClick={onDecideAnew}
          aria-label={`Decide anew: ${part.label}`}
          style={{ alignSelf: 'flex-start' }}
        >
          Decide anew
        </Button>
      )}
    </Stack>
  );
}

/** What was decided before and no longer stands; nothing of it is lost. */
export function EarlierDecisions({ part }: { readonly part: PartToDecide }) {
  const { instant } = useFormat();
  if (part.superseded.length === 0) return null;
  return (
    <details className={classes.history}>
      <summary>
        <Text span size="sm" td="underline">
          Decided before ({part.superseded.length})
        </Text>
      </summary>
      <Stack gap="xs" mt={4}>
        {part.superseded.map((decision) => (
          <div key={decision.id}>
            <Text>
              <s>{decisionWords(decision)}</s>
            </Text>
            <Text size="sm" c="dimmed">
              {decision.by}, {instant(decision.at)}
              {decision.reason !== '' && `: ${decision.reason}`}
            </Text>
          </div>
        ))}
      </Stack>
    </details>
  );
}
