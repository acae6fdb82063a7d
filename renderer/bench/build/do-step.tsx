import { Button, Text, TextInput } from '@mantine/core';
import { IconArrowNarrowRight } from '@tabler/icons-react';
import { type FormEvent, type ReactNode, useState } from 'react';
import type { StepOnBuild } from '../../../shared/contract/bench/index.ts';
import type { JobId } from '../../../shared/contract/ids.ts';
import { wiresThatDiffer } from '../../../shared/work/bench/build-steps.ts';
import { deskQuery } from '../../common/desk.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import classes from './build.module.css';
import { MissingReadings } from './missing-readings.tsx';
import { RunLink } from './run-link.tsx';
import { StepPhotos } from './step-photos.tsx';
import { PASS_WORDS, PassIcon } from './step-words.tsx';
import { TorqueStep } from './torque-step.tsx';
import { WireCheck } from './wire-check.tsx';

interface Draft {
  quantity: string;
  grade: string;
  way: string;
  /** By the wire of the diagram, the colour that it was found joined to. */
  found: Record<string, string>;
}

const NOTHING: Draft = { quantity: '', grade: '', way: '', found: {} };

/** What a step asks for, by its kind, and the button that passes it; `children` is the other way past. */
export function DoStep({
  jobId,
  step,
  onDone,
  children,
}: {
  readonly jobId: JobId;
  readonly step: StepOnBuild;
  readonly onDone: () => void;
  readonly children: ReactNode;
}) {
  const by = useBy();
  const [draft, setDraft, clear] = useDraft(`build.${jobId}.${step.key}`, NOTHING);
  const pass = useWrite(
    deskQuery.bench.passHoldPoint.mutationOptions({
      // With the write itself: once the step is passed, this form is gone and would not be told.
      onSuccess: () => {
        clear();
        onDone();
      },
    }),
  );
  const [photos, setPhotos] = useState(0);
  const wires = Object.entries(draft.found).map(([from, to]) => ({ from, to }));
  const ready =
    step.missing.length === 0 &&
    (step.run === null || step.run === 'passed') &&
    (step.kind !== 'wiring' || wiresThatDiffer(step.wires, wires).length === 0) &&
    (step.kind !== 'photo' || photos > 0);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    pass.mutate({
      by,
      jobId,
      key: step.key,
      quantity: draft.quantity,
      grade: draft.grade,
      way: draft.way,
      wires,
    });
  };
  return (
    <>
      {step.kind === 'torque' && <TorqueStep jobId={jobId} needs={step.needs} />}
      {step.kind === 'photo' && (
        <StepPhotos jobId={jobId} subject={step.key} onCount={setPhotos} add />
      )}
      {step.run !== null && <RunLink standing={step.run} />}
      {step.missing.length > 0 && (
        <MissingReadings step={step.key} features={step.missing} words={step.missingWords} />
      )}
      <form onSubmit={submit} className={classes.page}>
        {step.kind === 'orientation' && step.note !== '' && (
          <div className={classes.way}>
            <IconArrowNarrowRight size={32} aria-hidden />
            <span>{step.note}</span>
          </div>
        )}
        {step.kind !== 'orientation' && step.note !== '' && <Text size="lg">{step.note}</Text>}
        {step.kind === 'orientation' && (
          <TextInput
            size="lg"
            label="How it lies"
            description={
              step.note === '' ? 'Which mark faces which way.' : 'Only if there is more to say.'
            }
            value={draft.way}
            maxLength={200}
            onChange={(event) => setDraft({ ...draft, way: event.currentTarget.value })}
          />
        )}
        {step.kind === 'wiring' && (
          <WireCheck
            wires={step.wires}
            found={draft.found}
            onFound={(from, to) =>
              setDraft((before) => ({ ...before, found: { ...before.found, [from]: to } }))
            }
          />
        )}
        {step.kind === 'quantity' && (
          <div className={classes.filled}>
            {step.grade && (
              <TextInput
                size="lg"
                label="Grade, as on the can"
                placeholder="SAE 30"
                autoComplete="off"
                value={draft.grade}
                maxLength={60}
                onChange={(event) => setDraft({ ...draft, grade: event.currentTarget.value })}
              />
            )}
            <TextInput
              size="lg"
              label={step.unit === '' ? 'How much' : `How much, in ${step.unit}`}
              inputMode="decimal"
              autoComplete="off"
              classNames={{ input: classes.quantity }}
              value={draft.quantity}
              maxLength={20}
              onChange={(event) => setDraft({ ...draft, quantity: event.currentTarget.value })}
            />
          </div>
        )}
        {pass.isError && <RefusalAlert error={pass.error} />}
        <div className={classes.actions}>
          <Button
            type="submit"
            size="lg"
            className={classes.big}
            disabled={!ready}
            loading={pass.isPending}
            leftSection={<PassIcon size={24} aria-hidden />}
          >
            {PASS_WORDS[step.kind]}
          </Button>
          {children}
        </div>
      </form>
    </>
  );
}
