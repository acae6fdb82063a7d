import { Button, Text, Title } from '@mantine/core';
import { IconAlertTriangle, IconClockExclamation, IconLock } from '@tabler/icons-react';
import { useEffect, useRef, useState } from 'react';
import type { Build, StepOnBuild } from '../../../shared/contract/bench/index.ts';
import { STEP_KIND_LABELS } from '../../../shared/work/bench/build-steps.ts';
import { HoldPointReason, type ReasonFor } from '../hold-point-reason.tsx';
import classes from './build.module.css';
import { DoStep } from './do-step.tsx';
import { DoneStep } from './done-step.tsx';
import { KIND_ICONS } from './step-words.tsx';

interface StepPanelProps {
  readonly build: Build;
  readonly step: StepOnBuild;
  /** The step whose turn it is; null when none is open. */
  readonly due: StepOnBuild | null;
  readonly onDone: () => void;
  readonly onGo: (key: string) => void;
}

/** One step large: what is asked for, and the way past it. */
export function StepPanel({ build, step, due, onDone, onGo }: StepPanelProps) {
  const [reasonFor, setReasonFor] = useState<ReasonFor['what'] | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  // The step before was passed: whoever works by keyboard goes on from here, and a reader says which it is.
  useEffect(() => heading.current?.focus(), []);
  const Kind = KIND_ICONS[step.kind];
  const open = step.state === 'open';
  return (
    <section aria-label="Step at hand" className={classes.panel}>
      <div>
        <div className={classes.kind}>
          <Kind size={22} aria-hidden />
          <span>
            Step {build.steps.findIndex(({ key }) => key === step.key) + 1} of {build.steps.length}
          </span>
          <span>{STEP_KIND_LABELS[step.kind]}</span>
          {step.hold && (
            <>
              <IconLock size={18} aria-hidden />
              <span>Hold point</span>
            </>
          )}
        </div>
        <Title order={2} ref={heading} tabIndex={-1} className={classes.title}>
          {step.label}
        </Title>
      </div>
      {step.caution !== '' && (
        <div className={classes.caution}>
          <IconAlertTriangle size={22} aria-hidden />
          <span>{step.caution}</span>
        </div>
      )}
      {open && due !== null && due.key !== step.key && !build.closed && (
        <div className={classes.late}>
          <IconClockExclamation size={22} aria-hidden />
          <div className={classes.lateWords}>
            <span>
              Out of its order: first comes “{due.label}”. It can be done now, and is shown as done
              early.
            </span>
            <Button variant="default" size="sm" mih={44} onClick={() => onGo(due.key)}>
              Go to what comes first
            </Button>
          </div>
        </div>
      )}
      {step.openedAgain !== null && (
        <div className={classes.late}>
          <IconClockExclamation size={22} aria-hidden />
          <span>
            Open again: it was passed by {step.by}, and “{step.openedAgain.by}” was done after it.
            Do it again now.
          </span>
        </div>
      )}
      {open ? (
        <>
          {step.openedAgain === null && <History step={step} />}
          {build.closed ? (
            <Text>The job was handed over with this step open.</Text>
          ) : (
            <DoStep jobId={build.jobId} step={step} onDone={onDone}>
              <Button
                variant="default"
                size="lg"
                className={classes.big}
                onClick={() => setReasonFor('override')}
              >
                Override…
              </Button>
            </DoStep>
          )}
        </>
      ) : (
        <DoneStep jobId={build.jobId} step={step}>
          {!build.closed && (
            <div className={classes.actions}>
              {due !== null && (
                <Button size="lg" h="auto" className={classes.big} onClick={onDone}>
                  Go on with “{due.label}”
                </Button>
              )}
              <Button
                variant="default"
                size="lg"
                className={classes.big}
                onClick={() => setReasonFor('reopen')}
              >
                Reopen…
              </Button>
            </div>
          )}
        </DoneStep>
      )}
      <HoldPointReason
        jobId={build.jobId}
        wanted={reasonFor === null ? null : { point: step, what: reasonFor }}
        onClose={() => setReasonFor(null)}
        onWritten={reasonFor === 'override' ? onDone : undefined}
      />
    </section>
  );
}

/** Of a step that was done before and opened again. */
function History({ step }: { readonly step: StepOnBuild }) {
  if (step.by === '') return null;
  return (
    <Text>
      Reopened by {step.by}
      {step.reason !== '' && (
        <>
          : <q>{step.reason}</q>
        </>
      )}
    </Text>
  );
}
