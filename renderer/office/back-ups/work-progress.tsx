import { Alert } from '@mantine/core';
import { IconAlertTriangle, IconPlayerStop } from '@tabler/icons-react';
import { useMutation } from '@tanstack/react-query';
import type { LongWork } from '../../../shared/contract/back-ups.ts';
import type { LongWorkKind, LongWorkStep } from '../../../shared/work/office/back-ups.ts';
import { deskQuery } from '../../common/desk.ts';
import { ProgressLine } from './progress-line.tsx';

const DOING: Record<LongWorkStep, string> = {
  copying: 'Copying',
  checking: 'Reading every page through',
  keeping: 'Backing up what is here now',
  placing: 'Putting it in place',
};

const STEPS: Record<LongWorkKind, readonly LongWorkStep[]> = {
  'back-up': ['copying', 'checking'],
  check: ['copying', 'checking'],
  'bring-back': ['copying', 'checking', 'keeping', 'placing'],
};

/** A work of the desk while it goes on, and what ended it before its time. Nothing when it is done. */
export function WorkProgress({ work }: { work: LongWork }) {
  const stop = useMutation(deskQuery.office.stopLongWork.mutationOptions());
  const { id, kind, state, step, share, trouble } = work;
  if (state === 'done') return null;
  if (state === 'running') {
    const steps = STEPS[kind];
    return (
      <ProgressLine
        doing={`${DOING[step]} (step ${steps.indexOf(step) + 1} of ${steps.length})`}
        share={share}
        stopping={stop.isPending || stop.isSuccess}
        onStop={step === 'placing' ? null : () => stop.mutate({ id })}
      />
    );
  }
  const stopped = state === 'stopped';
  return (
    <Alert
      role="alert"
      variant="light"
      color={stopped ? 'gray' : 'red'}
      icon={stopped ? <IconPlayerStop aria-hidden /> : <IconAlertTriangle aria-hidden />}
      title={trouble?.message}
      data-code={trouble?.code}
    />
  );
}
