import { Text } from '@mantine/core';
import { IconCircleCheck, IconClockExclamation, IconPencil } from '@tabler/icons-react';
import type { ReactNode } from 'react';
import type { StepOnBuild } from '../../../shared/contract/bench/index.ts';
import type { JobId } from '../../../shared/contract/ids.ts';
import { durationWords, gaugesInWords } from '../../../shared/work/bench/step-record.ts';
import { useFormat } from '../../common/format.ts';
import classes from './build.module.css';
import { RunLink } from './run-link.tsx';
import { StepPhotos } from './step-photos.tsx';

/** In which order it was done, how long after the one before, and with what. */
function recordWords(step: StepOnBuild): string {
  const after =
    step.seconds === null ? '' : `, ${durationWords(step.seconds)} after the one before`;
  const order = step.order === null ? '' : `Done as number ${step.order}${after}.`;
  const gauges = gaugesInWords(step);
  return [order, gauges === '' ? '' : `With: ${gauges}.`].filter(Boolean).join(' ');
}

/** What is on record of a step that is done: who, when, what, and before what it was done. */
export function DoneStep({
  jobId,
  step,
  children,
}: {
  readonly jobId: JobId;
  readonly step: StepOnBuild;
  readonly children: ReactNode;
}) {
  const format = useFormat();
  const passed = step.state === 'passed';
  return (
    <>
      <div className={classes.done}>
        {passed ? <IconCircleCheck size={24} aria-hidden /> : <IconPencil size={24} aria-hidden />}
        <div>
          {passed ? 'Passed' : 'Overridden'} by {step.by}
          {step.at !== null && `, ${format.instant(step.at)}`}
          {step.reason !== '' && (
            <>
              : <q>{step.reason}</q>
            </>
          )}
          {passed && step.kind !== 'photo' && step.detail !== '' && (
            <Text fw={600} size="lg">
              {step.detail}
            </Text>
          )}
        </div>
      </div>
      <Text c="dimmed" size="sm">
        {recordWords(step)}
      </Text>
      {step.doneBefore.length > 0 && (
        <div className={classes.late}>
          <IconClockExclamation size={22} aria-hidden />
          <span>Done before {step.doneBefore.map((label) => `“${label}”`).join(', ')}.</span>
        </div>
      )}
      {step.run !== null && <RunLink standing={step.run} />}
      {step.kind === 'photo' && <StepPhotos jobId={jobId} subject={step.key} />}
      {children}
    </>
  );
}
