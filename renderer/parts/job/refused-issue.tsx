import { Button, Checkbox, Group, Stack, Text, TextInput } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import { z } from 'zod';
import { PartName } from '../../../shared/contract/parts/index.ts';
import { RefusalAlert, refusalOf } from '../../common/refusal.tsx';
import type { Wanted } from './use-issue.ts';

const Several = z.object({ parts: z.array(PartName) });
const Elsewhere = z.object({ jobs: z.array(z.string()) });

interface RefusedIssueProps {
  wanted: Wanted;
  error: unknown;
  onAgain: (wanted: Wanted) => void;
  onSettled: () => void;
}

/** Why a part was not issued, and the ways there are to issue it all the same. */
export function RefusedIssue({ wanted, error, onAgain, onSettled }: RefusedIssueProps) {
  const { code, data } = refusalOf(error);
  const several = Several.safeParse(data);
  const elsewhere = Elsewhere.safeParse(data);
  return (
    <Stack gap="xs">
      <RefusalAlert error={error} />
      <Group gap="xs">
        <Text size="sm" flex={1}>
          Not issued: {wanted.number}.
          {elsewhere.success && ` Promised to ${elsewhere.data.jobs.join(', ')}.`}
        </Text>
        <Button size="compact-sm" variant="default" onClick={onSettled}>
          Leave it
        </Button>
      </Group>
      {several.success && (
        <Group gap="xs">
          {several.data.parts.map((part) => (
            <Button
              key={part.id}
              variant="default"
              onClick={() => {
                onSettled();
                onAgain({ ...wanted, number: part.number });
              }}
            >
              {part.number} · {part.description}
            </Button>
          ))}
        </Group>
      )}
      {(code === 'PROMISED_ELSEWHERE' || code === 'NOT_ON_THE_SHELF') && (
        <WithReason wanted={wanted} inHand={code === 'NOT_ON_THE_SHELF'} onAgain={onAgain} />
      )}
    </Stack>
  );
}

/** A reason gets past the promises to other jobs; past an empty shelf only with the part in the hand. */
function WithReason(props: { wanted: Wanted; inHand: boolean; onAgain: (wanted: Wanted) => void }) {
  const [reason, setReason] = useState(props.wanted.reason);
  const [held, setHeld] = useState(false);
  const ready = reason.trim() !== '' && (held || !props.inHand);
  const send = (event: FormEvent) => {
    event.preventDefault();
    if (ready) props.onAgain({ ...props.wanted, reason, belowNothing: props.inHand });
  };
  return (
    <form onSubmit={send} noValidate aria-label="Issue it with a reason">
      <Group align="flex-end" gap="sm">
        <TextInput
          label="Why it goes to this job all the same"
          required
          flex="1 1 18rem"
          maxLength={300}
          value={reason}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        {props.inHand && (
          <Checkbox
            mb="0.6rem"
            label="I have it in my hand: the count is wrong"
            checked={held}
            onChange={(event) => setHeld(event.currentTarget.checked)}
          />
        )}
        <Button type="submit" variant="light" disabled={!ready}>
          Issue it with this reason
        </Button>
      </Group>
    </form>
  );
}
