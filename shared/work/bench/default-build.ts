import type { Cycle, MachineKind, ValveLayout } from '../vocabulary.ts';
import type { BuildStep } from './build-steps.ts';
import { UNDONE_BY } from './default-undoing.ts';
import { FINISHING_STEPS } from './usual-steps/finishing-steps.ts';
import { HEAD_STEPS } from './usual-steps/head-steps.ts';
import { INSIDE_STEPS, TIGHTNESS_STEPS, TURNED_BY_HAND } from './usual-steps/inside-steps.ts';
import { IGNITION_STEPS, OUTSIDE_STEPS } from './usual-steps/outside-steps.ts';
import type { UsualStep } from './usual-steps/usual-step.ts';
import { touchedBy, type WorkArea, type WorkKind } from './work/kinds-of-work.ts';

/**
 * The usual steps of a build, before anybody wrote a sheet. Their order is that of the work: what is covered by
 * a later part comes before it, and what a later step would undo comes after that step.
 */

/** What the steps of an engine depend on. */
export interface BuiltEngine {
  cycle: Cycle;
  cylinders: number;
  /** Null where nobody said, and for an engine without valves. */
  valves: ValveLayout | null;
}

const STEPS: readonly UsualStep[] = [
  ...INSIDE_STEPS,
  ...HEAD_STEPS,
  ...TIGHTNESS_STEPS,
  ...IGNITION_STEPS,
  TURNED_BY_HAND,
  ...OUTSIDE_STEPS,
  ...FINISHING_STEPS,
];

const asStep = ({
  areas: _areas,
  cycle: _cycle,
  valves: _valves,
  notValves: _notValves,
  several: _several,
  machines: _machines,
  ...step
}: UsualStep): BuildStep => ({
  caution: '',
  hold: true,
  needs: [],
  wires: [],
  unit: '',
  grade: false,
  note: '',
  undoneBy: [...(UNDONE_BY[step.key] ?? [])],
  ...step,
});

/** Every engine's and every machine's together. */
export const EVERY_STEP: readonly BuildStep[] = STEPS.map(asStep);

const suits = (step: UsualStep, { cycle, cylinders, valves }: BuiltEngine): boolean =>
  (step.cycle === undefined || step.cycle === cycle) &&
  (step.valves === undefined || step.valves === valves) &&
  (step.notValves === undefined || step.notValves !== valves) &&
  (step.several === undefined || cylinders > 1);

/** What a sheet for every engine begins with: no step of it is tied to a kind of machine. */
export const EVERY_BUILD: readonly BuildStep[] = STEPS.filter(
  ({ machines }) => machines === undefined,
).map(asStep);

/** Whether a step that is known here belongs to such an engine; others belong to all. */
export function belongsTo({ key }: Pick<BuildStep, 'key'>, engine: BuiltEngine): boolean {
  const known = STEPS.find((step) => step.key === key);
  return known === undefined || suits(known, engine);
}

/** The steps that such an engine is rebuilt by while no build sheet says otherwise. */
export const defaultBuild = (engine: BuiltEngine): BuildStep[] =>
  EVERY_BUILD.filter((step) => belongsTo(step, engine));

/** What is done on the bench: to which engine, in which machine, and what of it is touched. */
export interface BenchWork {
  engine: BuiltEngine;
  machine: MachineKind;
  work: WorkKind;
  touched: readonly WorkArea[];
}

/**
 * The steps of a job: of a rebuild all of its sheet, of other work the usual ones of what is touched, in the
 * words of the sheet where it has them.
 */
export function stepsForWork(
  sheet: readonly BuildStep[],
  { engine, machine, work, touched }: BenchWork,
): BuildStep[] {
  if (work === 'rebuild') return [...sheet];
  const areas = touchedBy(work, touched);
  return STEPS.filter(
    (step) =>
      suits(step, engine) &&
      (step.machines === undefined || step.machines.includes(machine)) &&
      (step.areas === 'always' || step.areas.some((area) => areas.includes(area))),
  ).map((step) => sheet.find(({ key }) => key === step.key) ?? asStep(step));
}
