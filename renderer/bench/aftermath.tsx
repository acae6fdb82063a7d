import { Alert, Button, Text } from '@mantine/core';
import type { Reading } from '../../shared/contract/bench/index.ts';
import { asTyped } from '../../shared/work/bench/reading-in-words.ts';
import { refusalOf } from '../common/refusal.tsx';
import { LastReading } from './last-reading.tsx';
import type { AskedReading, SentReading } from './reading-queue.ts';
import { SlipQuestion } from './slip-question.tsx';
import type { QueueInUse } from './use-reading-queue.ts';

/** What became of the readings that were sent: the last one, those that are asked about, those refused. */
export function Aftermath({
  readings: { queue, send, settle },
  mine,
  last,
  typing,
  onBack,
  onTypedOn,
  onCorrect,
}: {
  readonly readings: QueueInUse;
  /** Whether a reading belongs to the feature on the screen. */
  readonly mine: (sent: SentReading) => boolean;
  readonly last: Reading | null;
  /** Something stands in the field. */
  readonly typing: boolean;
  /** It goes back to the field of its place. */
  readonly onBack: (sent: SentReading) => void;
  /** Somebody, or a gauge, types on while a question stands. */
  readonly onTypedOn: () => void;
  readonly onCorrect: (reading: Reading) => void;
}) {
  const asked = queue.asked.filter(mine);
  const [question] = asked;
  const answer = (
    { id, input, label, band }: AskedReading,
    change: Partial<SentReading['input']>,
  ) => {
    settle(id);
    send({ label, band, input: { ...input, ...change } });
    onTypedOn();
  };
  return (
    <>
      {queue.refused.filter(mine).map((refused) => (
        <Alert
          key={refused.id}
          color="red"
          role="alert"
          title={`${asTyped(refused.input)}${refused.label === '' ? '' : ` at ${refused.label}`} is not recorded`}
        >
          <Text size="sm" c="inherit" mb="xs">
            {refusalOf(refused.error).message}
          </Text>
          <Button variant="default" mih={44} onClick={() => onBack(refused)}>
            Back to it
          </Button>
        </Alert>
      ))}
      {question !== undefined && (
        <SlipQuestion
          key={question.id}
          asked={question}
          wantsFocus={!typing}
          onTake={(likely) =>
            answer(question, {
              text: likely,
              unit: question.slip.unit,
              typed: { text: question.input.text, unit: question.input.unit },
            })
          }
          onKeep={() => answer(question, { keepAsTyped: true })}
          onBack={() => onBack(question)}
          onTypedOn={onTypedOn}
        />
      )}
      {asked.length > 1 && (
        <Text size="sm">{asked.length - 1} more readings wait for an answer after this one.</Text>
      )}
      <LastReading
        reading={last}
        underWay={queue.waiting.filter(mine).length}
        onCorrect={onCorrect}
      />
    </>
  );
}
