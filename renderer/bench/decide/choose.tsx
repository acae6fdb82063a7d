import { Button, Group, NumberInput, Radio, Stack, Text, Textarea } from '@mantine/core';
import { IconCheck } from '@tabler/icons-react';
import type { FormEvent } from 'react';
import type { JobDecisions, PartToDecide } from '../../../shared/contract/bench/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert, refusalOf } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import classes from './decide.module.css';
import { stepWords } from './decision-words.ts';
import { StepChoice } from './step-choice.tsx';
import { useChoiceDraft } from './use-choice-draft.ts';

const WHY_WANTED = {
  stop: 'A stop needs its reason in writing.',
  'against-advice': 'It goes against the advice: say why.',
  doubt: 'A figure is too close to call: say why it may be decided all the same.',
} as const;

interface ChooseProps {
  readonly job: JobDecisions;
  readonly part: PartToDecide;
  readonly onDone: () => void;
  /** Back to what stands; null where nothing stands yet. */
  readonly onLeave: (() => void) | null;
}

/** The choices for a part, and what goes with the one chosen. Nothing is decided before the last button. */
export function Choose({ job, part, onDone, onLeave }: ChooseProps) {
  const by = useBy();
  const draft = useChoiceDraft(job.jobId, part);
  const decide = useWrite(
    deskQuery.bench.decide.mutationOptions({
      onSuccess: () => {
        draft.clear();
        onDone();
      },
    }),
  );
  const { choice } = draft;
  const label = part.choices.find((each) => each.choice === choice)?.label ?? '';
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (choice === null) return;
    decide.mutate({
      by,
      jobId: job.jobId,
      subject: part.subject,
      cylinder: part.cylinder,
      choice,
      step: draft.step,
      machineTo: draft.machineTo,
      allowance: job.allowance,
      reason: draft.reason,
      supersedes: part.standing?.id ?? null,
    });
  };
  const errors = fieldErrors(decide.error);
  const reasonWanted = decide.error !== null && refusalOf(decide.error).code === 'REASON_WANTED';
  return (
    <form onSubmit={submit}>
      <Stack gap="sm">
        <Radio.Group
          aria-label={`What becomes of it: ${part.label}`}
          value={choice}
          onChange={(value) => {
            const chosen = part.choices.find((each) => each.choice === value);
            if (chosen !== undefined) draft.choose(chosen.choice);
            decide.reset();
          }}
        >
          <div className={classes.choices}>
            {part.choices.map((each) => (
              <Radio.Card
                key={each.choice}
                value={each.choice}
                className={classes.choice}
                data-advised={each.choice === part.advice.choice}
              >
                <span className={classes.label}>
                  {each.choice === choice && <IconCheck size={18} aria-hidden />}
                  {each.label}
                </span>
                {each.choice === part.advice.choice && (
                  <Text span className={classes.note}>
                    Advised
                  </Text>
                )}
              </Radio.Card>
            ))}
          </div>
        </Radio.Group>
        {choice !== null && (
          <>
            {draft.stepped && (
              <StepChoice
                choice={choice}
                steps={part.steps}
                advised={part.advice.choice === choice ? part.advice.step : null}
                value={draft.step}
                onChange={draft.setStep}
              />
            )}
            {draft.size !== null && (
              <Group gap="sm" align="flex-start">
                {(['low', 'high'] as const).map((side) => (
                  <NumberInput
                    key={side}
                    label={side === 'low' ? 'Machine to, from (mm)' : 'to (mm)'}
                    value={draft.size?.[side] ?? ''}
                    error={errors[`machineTo.${side}`]}
                    decimalScale={4}
                    min={0}
                    hideControls
                    w={side === 'low' ? '11.5rem' : '8.5rem'}
                    onChange={(value) =>
                      draft.size !== null && draft.setSize({ ...draft.size, [side]: value })
                    }
                  />
                ))}
              </Group>
            )}
            <Textarea
              label={draft.why === null ? 'Reason, if there is more to say' : 'Reason'}
              description={draft.why === null ? undefined : WHY_WANTED[draft.why]}
              required={draft.why !== null}
              maxLength={500}
              value={draft.reason}
              error={errors.reason ?? reasonWanted}
              onChange={(event) => draft.setReason(event.currentTarget.value)}
            />
            <RefusalAlert error={decide.error} />
            <Group gap="sm">
              <Button type="submit" h={52} size="md" loading={decide.isPending}>
                Decide: {label.toLowerCase()}
                {draft.step !== null && ` ${stepWords(choice, draft.step)}`}
              </Button>
              <Button variant="default" h={52} onClick={draft.clear}>
                Choose nothing yet
              </Button>
            </Group>
          </>
        )}
        {onLeave !== null && (
          <Button
            variant="subtle"
            color="gray"
            h={48}
            style={{ alignSelf: 'flex-start' }}
            onClick={() => {
              draft.clear();
              onLeave();
            }}
          >
            Leave it as it stands
          </Button>
        )}
      </Stack>
    </form>
  );
}
