import { Button, Group, Radio, Stack, Textarea } from '@mantine/core';
import { notifications } from '@mantine/notifications';
import { type FormEvent, useState } from 'react';
import type { Diagnosis, Finding } from '../../../shared/contract/bench/index.ts';
import {
  CHECK_LABELS,
  type Check,
  FOUND,
  FOUND_LABELS,
  isMeasuredCheck,
} from '../../../shared/work/bench/diagnosis.ts';
import { readFigures } from '../../../shared/work/bench/diagnosis-figures.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import choices from '../decide/decide.module.css';
import classes from './diagnose.module.css';
import { FigureFields } from './figure-fields.tsx';
import {
  draftOf,
  EMPTY_FINDING,
  type FindingDraft,
  typedFigures,
  workOf,
} from './finding-draft.ts';
import { WorkFields } from './work-fields.tsx';

interface FindingFormProps {
  readonly diagnosis: Diagnosis;
  readonly check: Check;
  /** The finding that is corrected; null for a first one. */
  readonly corrects: Finding | null;
  readonly onNoted: (diagnosis: Diagnosis) => void;
  /** Back to what stands; null where nothing stands. */
  readonly onLeave: (() => void) | null;
}

/** One check: what was found, what the gauge showed, what it takes. */
export function FindingForm({ diagnosis, check, corrects, onNoted, onLeave }: FindingFormProps) {
  const { jobId, cylinders } = diagnosis;
  const by = useBy();
  const [draft, setDraft, clear] = useDraft<FindingDraft>(
    `finding.${jobId}.${corrects?.id ?? check}`,
    corrects === null ? EMPTY_FINDING : draftOf(corrects),
  );
  const [tried, setTried] = useState(false);
  const write = useWrite(
    deskQuery.bench.noteFinding.mutationOptions({
      onSuccess: (noted) => {
        clear();
        notifications.show({ message: `${CHECK_LABELS[check]}: noted.` });
        onNoted(noted);
      },
    }),
  );
  const change = (part: Partial<FindingDraft>) => setDraft((before) => ({ ...before, ...part }));
  const typed = typedFigures(check, draft, cylinders);
  const read = readFigures(check, typed, cylinders);
  const refused = fieldErrors(write.error);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    const { found, words } = draft;
    if (found === null || Object.keys(read.faults).length > 0) return;
    write.mutate({
      by,
      jobId,
      check,
      found,
      figures: typed,
      words,
      work: workOf(draft),
      supersedes: corrects?.id ?? null,
    });
  };
  return (
    <form onSubmit={submit}>
      <Stack gap="md">
        <Radio.Group
          aria-label={`What was found: ${CHECK_LABELS[check]}`}
          value={draft.found}
          onChange={(value) => change({ found: FOUND.find((each) => each === value) ?? null })}
          error={
            tried && draft.found === null ? 'Say whether it is sound or wants work.' : undefined
          }
        >
          <div className={classes.found}>
            {FOUND.map((found) => (
              <Radio.Card key={found} value={found} className={choices.choice}>
                {FOUND_LABELS[found]}
              </Radio.Card>
            ))}
          </div>
        </Radio.Group>
        {isMeasuredCheck(check) && (
          <FigureFields
            check={check}
            cylinders={cylinders}
            draft={draft}
            read={read}
            book={diagnosis.compression}
            faultAt={(index) =>
              (tried ? read.faults[index] : undefined) ?? refused[`figures.${index}.text`]
            }
            onChange={change}
          />
        )}
        <Textarea
          label="What was seen"
          value={draft.words}
          onChange={(event) => change({ words: event.currentTarget.value })}
          error={refused.words}
          maxLength={1000}
          autosize
          minRows={2}
        />
        {draft.found === 'wants-work' && (
          <WorkFields work={draft.work} onChange={(work) => change({ work })} />
        )}
        <RefusalAlert error={write.error} />
        <Group gap="sm">
          <Button type="submit" size="lg" h={52} loading={write.isPending}>
            {corrects === null ? 'Note it' : 'Note the correction'}
          </Button>
          {onLeave !== null && (
            <Button variant="default" size="lg" h={52} onClick={onLeave}>
              Leave it as it is
            </Button>
          )}
        </Group>
      </Stack>
    </form>
  );
}
