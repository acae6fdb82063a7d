import { Button, Group } from '@mantine/core';
import { IconPlus } from '@tabler/icons-react';
import { useRef, useState } from 'react';
import type { BuildSheet } from '../../../shared/contract/bench/index.ts';
import type { BuildStep } from '../../../shared/work/bench/build-steps.ts';
import { deskQuery } from '../../common/desk.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import classes from './build-sheet.module.css';
import { LeftOut } from './left-out.tsx';
import { keyFor, moved, NEW_STEP } from './sheet-draft.ts';
import { StepForm } from './step-form.tsx';
import { StepRow } from './step-row.tsx';

interface Draft {
  steps: BuildStep[];
}

/** The steps in their order: moved, amended, left out, added; saved together as the next revision. */
export function BuildSheetEditor({ sheet }: { readonly sheet: BuildSheet }) {
  const by = useBy();
  const engineModelId = sheet.engineModel?.id ?? null;
  const [{ steps }, setDraft, clear] = useDraft<Draft>(
    `build-sheet.${engineModelId ?? 'every'}.${sheet.revision}`,
    { steps: sheet.steps },
  );
  const [editing, setEditing] = useState<BuildStep | 'new' | null>(null);
  const [said, setSaid] = useState('');
  const list = useRef<HTMLOListElement>(null);
  const save = useWrite(
    deskQuery.bench.reviseBuildSheet.mutationOptions({ onSuccess: () => clear() }),
  );
  const changed = JSON.stringify(steps) !== JSON.stringify(sheet.steps);

  const set = (next: BuildStep[], words = '') => {
    setDraft({ steps: next });
    setSaid(words);
  };
  const move = (index: number, by: -1 | 1) => {
    const step = steps[index];
    if (step === undefined) return;
    set(moved(steps, index, by), `${step.label}: now step ${index + 1 + by} of ${steps.length}.`);
  };
  const leaveOut = (index: number) => {
    const step = steps[index];
    set(steps.toSpliced(index, 1), `${step?.label ?? ''}: left out.`);
    // The row that had the focus is gone: the next one takes it.
    requestAnimationFrame(() => {
      const rows = list.current?.querySelectorAll<HTMLElement>('[data-edit]');
      rows?.[Math.min(index, rows.length - 1)]?.focus();
    });
  };
  const keep = (step: BuildStep) => {
    if (editing === 'new') set([...steps, { ...step, key: keyFor(step.label, steps) }]);
    else set(steps.map((each) => (each.key === step.key ? step : each)));
    setEditing(null);
  };

  return (
    <div className={classes.editor}>
      <ol className={classes.steps} ref={list} aria-label="Steps of the build sheet">
        {steps.map((step, index) => (
          <StepRow
            key={step.key}
            step={step}
            number={index + 1}
            last={index === steps.length - 1}
            inherited={sheet.inherited.steps.find(({ key }) => key === step.key) ?? null}
            onMove={(by) => move(index, by)}
            onEdit={() => setEditing(step)}
            onLeaveOut={() => leaveOut(index)}
          />
        ))}
      </ol>
      <p className={classes.said} role="status">
        {said}
      </p>
      <Group>
        <Button
          variant="default"
          size="md"
          mih={48}
          leftSection={<IconPlus size={20} aria-hidden />}
          onClick={() => setEditing('new')}
        >
          Add a step
        </Button>
      </Group>
      <LeftOut
        steps={steps}
        inherited={sheet.inherited}
        onTakeBack={(step) => set([...steps, step], `${step.label}: taken back, at the end.`)}
        onTakeAll={() => set(sheet.inherited.steps, 'All steps as inherited.')}
      />
      {save.isError && <RefusalAlert error={save.error} />}
      <Group className={classes.bar}>
        <Button
          size="lg"
          mih={52}
          disabled={!changed || steps.length === 0}
          loading={save.isPending}
          onClick={() => save.mutate({ by, engineModelId, steps, basedOn: sheet.revision })}
        >
          Save as revision {sheet.revision + 1}
        </Button>
        {changed && (
          <Button variant="default" size="lg" mih={52} onClick={clear}>
            Undo all changes
          </Button>
        )}
      </Group>
      <StepForm
        step={editing === 'new' ? NEW_STEP : editing}
        isNew={editing === 'new'}
        onKeep={keep}
        onClose={() => setEditing(null)}
      />
    </div>
  );
}
