import type { Cycle } from '../vocabulary.ts';
import type { BuildStep } from './build-steps.ts';
import { UNDONE_BY } from './default-undoing.ts';

type Known = Pick<BuildStep, 'key' | 'kind' | 'label'> &
  Partial<BuildStep> & { cycles?: readonly Cycle[] };

const EARTH_THE_LEAD = 'Plug lead off and earthed before the engine is turned by hand.';

const STEPS: readonly Known[] = [
  {
    key: 'rod-cap',
    kind: 'orientation',
    label: 'Rod cap the right way round, match marks together',
    note: 'Match marks of rod and cap on the same side, the rod facing as it came out.',
    needs: ['crankpin', 'rod-big-end'],
  },
  {
    key: 'ring-gaps',
    kind: 'measure',
    label: 'Ring gaps measured in this bore and staggered',
    caution: 'Eye protection: rings snap.',
    needs: ['ring-end-gap'],
  },
  {
    key: 'timing-marks',
    kind: 'orientation',
    label: 'Timing marks of crankshaft and camshaft together',
    note: 'The mark on the camshaft gear meets the mark on the crankshaft gear.',
    cycles: ['four-stroke'],
  },
  {
    key: 'head-gasket',
    kind: 'orientation',
    label: 'Head gasket new and the right way round',
    caution: 'Old gaskets may hold asbestos: wet, don’t sand or blow.',
    note: 'Marking or raised bead as the source says, every passage open.',
  },
  {
    key: 'head-bolts',
    kind: 'torque',
    label: 'Head bolts tightened in stages and in order',
    needs: ['head-bolt-torque'],
  },
  {
    key: 'flywheel-key',
    kind: 'confirm',
    label: 'Flywheel key whole and seated, taper clean and dry',
    caution: 'A loose flywheel can leave the engine.',
  },
  {
    key: 'air-gap',
    kind: 'measure',
    label: 'Coil air gap set at every leg with the leaf still in',
    caution: EARTH_THE_LEAD,
    needs: ['coil-air-gap'],
  },
  {
    key: 'turned-by-hand',
    kind: 'confirm',
    label: 'Turned by hand a full cycle, nothing touching',
    caution: EARTH_THE_LEAD,
  },
  {
    key: 'wiring',
    kind: 'wiring',
    label: 'Wiring colour to colour, confirmed against a diagram',
  },
  {
    key: 'valve-lash',
    kind: 'measure',
    label: 'Valve lash set cold on the compression stroke, at or just past top dead centre',
    caution: EARTH_THE_LEAD,
    needs: ['valve-lash-intake', 'valve-lash-exhaust'],
    cycles: ['four-stroke'],
  },
  {
    key: 'plug-gap',
    kind: 'measure',
    label: 'Plug gap set, plug tightened',
    needs: ['plug-gap'],
  },
  {
    key: 'oil',
    kind: 'quantity',
    label: 'Oil filled to the mark, grade and amount noted on the engine',
    unit: 'ml',
    cycles: ['four-stroke'],
  },
  {
    key: 'fuel-mix',
    kind: 'confirm',
    label: 'Fuel mixed with oil at the maker’s ratio',
    caution: 'Fill outdoors, away from flame.',
    cycles: ['two-stroke'],
  },
  {
    key: 'as-built',
    kind: 'photo',
    label: 'Photo of the engine as built',
    hold: false,
  },
  {
    key: 'test-run',
    kind: 'run',
    label: 'Test run: stop switch, interlocks, governor, leaks, fasteners again',
    caution:
      'Exhaust outside (carbon monoxide). Keep clear of tines, blades and belts; hot surfaces.',
  },
];

const asStep = ({ cycles: _, ...step }: Known): BuildStep => ({
  caution: '',
  hold: true,
  needs: [],
  wires: [],
  unit: '',
  note: '',
  undoneBy: [...(UNDONE_BY[step.key] ?? [])],
  ...step,
});

/** The steps of every build, before anybody wrote a sheet: both cycles' together. */
export const EVERY_BUILD: readonly BuildStep[] = STEPS.map(asStep);

/** Whether a step that is known here belongs to engines of this cycle; others belong to all. */
export const belongsTo = ({ key }: Pick<BuildStep, 'key'>, cycle: Cycle): boolean =>
  STEPS.find((step) => step.key === key)?.cycles?.includes(cycle) ?? true;

/** The steps that an engine of this cycle is built by while no build sheet says otherwise. */
export const defaultBuild = (cycle: Cycle): BuildStep[] =>
  EVERY_BUILD.filter((step) => belongsTo(step, cycle));
