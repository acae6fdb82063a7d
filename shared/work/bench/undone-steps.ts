import type { MeasuredFeature } from '../features.ts';
import type { BuildStep } from './build-steps.ts';
import { UNDONE_BY } from './default-undoing.ts';
import type { HoldPointEvent } from './hold-points.ts';

/** Steps of a build that a later one undoes: an engine is turned by hand after its head is on, not before. */

export interface DatedEvent extends HoldPointEvent {
  at: string;
}

/** One bolt pulled; stage 0 marks a sequence that was begun anew. */
export interface DatedPull {
  feature: MeasuredFeature;
  stage: number;
  at: string;
}

export interface Undoing {
  /** Label of the step that undid it. */
  by: string;
  at: string;
}

type Step = Pick<BuildStep, 'key' | 'kind' | 'label' | 'needs' | 'undoneBy'>;

/**
 * What undid a step after it was last passed: another step passed after it, or its bolts pulled again; the
 * latest of them. Null while it stands, is open, or was overridden: a reason in writing holds as it was
 * written.
 * @param events of the job, oldest first
 */
export function undoingOf(
  step: Step,
  steps: readonly Step[],
  events: readonly DatedEvent[],
  pulls: readonly DatedPull[],
): Undoing | null {
  const passed = events.findLastIndex(({ key }) => key === step.key);
  const last = events[passed];
  if (last?.outcome !== 'passed') return null;
  const undoneBy = step.undoneBy ?? UNDONE_BY[step.key] ?? [];
  const undoers = steps.filter(({ key }) => undoneBy.includes(key));
  const after = events.slice(passed + 1);
  const undoings = undoers.flatMap(({ key, kind, label, needs }) => [
    ...after
      .filter((event) => event.key === key && event.outcome === 'passed')
      .map(({ at }) => ({ by: label, at })),
    ...(kind === 'torque'
      ? pulls
          .filter(({ feature, at }) => needs.includes(feature) && at > last.at)
          .map(({ at }) => ({ by: label, at }))
      : []),
  ]);
  return undoings.toSorted((a, b) => a.at.localeCompare(b.at)).at(-1) ?? null;
}
