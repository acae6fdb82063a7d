import type { MeasuredFeature } from './features.ts';
import type { Cycle } from './vocabulary.ts';

/** A step of the build that nobody may walk past: it is ticked by a person, or overridden in writing. */
export interface HoldPoint {
  key: string;
  label: string;
  /** What can hurt, or what goes wrong when it is skipped. Empty when nothing does. */
  caution: string;
  /** Features that must have a reading before the point can be ticked. */
  needs: readonly MeasuredFeature[];
}

export interface HoldPointEvent {
  key: string;
  outcome: 'passed' | 'overridden' | 'reopened';
}

export type HoldPointState = 'open' | 'passed' | 'overridden';

const EARTH_THE_LEAD = 'Plug lead off and earthed before the engine is turned by hand.';

const POINTS: readonly (HoldPoint & { cycles?: readonly Cycle[] })[] = [
  {
    key: 'rod-cap',
    label: 'Rod cap the right way round, match marks together',
    caution: '',
    needs: ['crankpin', 'rod-big-end'],
  },
  {
    key: 'ring-gaps',
    label: 'Ring gaps measured in this bore and staggered',
    caution: 'Eye protection: rings snap.',
    needs: ['ring-end-gap'],
  },
  {
    key: 'timing-marks',
    label: 'Timing marks of crankshaft and camshaft together',
    caution: '',
    needs: [],
    cycles: ['four-stroke'],
  },
  {
    key: 'head-gasket',
    label: 'Head gasket new and the right way round',
    caution: 'Old gaskets may hold asbestos: wet, don’t sand or blow.',
    needs: [],
  },
  {
    key: 'head-bolts',
    label: 'Head bolts tightened in stages and in order',
    caution: '',
    needs: ['head-bolt-torque'],
  },
  {
    key: 'flywheel-key',
    label: 'Flywheel key whole and seated, taper clean and dry',
    caution: 'A loose flywheel can leave the engine.',
    needs: [],
  },
  {
    key: 'air-gap',
    label: 'Coil air gap set at every leg with the leaf still in',
    caution: EARTH_THE_LEAD,
    needs: ['coil-air-gap'],
  },
  {
    key: 'turned-by-hand',
    label: 'Turned by hand a full cycle, nothing touching',
    caution: EARTH_THE_LEAD,
    needs: [],
  },
  {
    key: 'wiring',
    label: 'Wiring colour to colour, confirmed against a diagram',
    caution: '',
    needs: [],
  },
  {
    key: 'valve-lash',
    label: 'Valve lash set cold on the compression stroke, at or just past top dead centre',
    caution: EARTH_THE_LEAD,
    needs: ['valve-lash-intake', 'valve-lash-exhaust'],
    cycles: ['four-stroke'],
  },
  {
    key: 'plug-gap',
    label: 'Plug gap set, plug tightened',
    caution: '',
    needs: ['plug-gap'],
  },
  {
    key: 'oil',
    label: 'Oil filled to the mark, grade and amount noted on the engine',
    caution: '',
    needs: [],
    cycles: ['four-stroke'],
  },
  {
    key: 'fuel-mix',
    label: 'Fuel mixed with oil at the maker’s ratio',
    caution: 'Fill outdoors, away from flame.',
    needs: [],
    cycles: ['two-stroke'],
  },
  {
    key: 'test-run',
    label: 'Test run: stop switch, interlocks, governor, leaks, fasteners again',
    caution:
      'Exhaust outside (carbon monoxide). Keep clear of tines, blades and belts; hot surfaces.',
    needs: [],
  },
];

/** The hold points of an engine of this cycle, in build order. */
export const holdPointsOf = (cycle: Cycle): HoldPoint[] =>
  POINTS.filter((point) => point.cycles === undefined || point.cycles.includes(cycle)).map(
    ({ key, label, caution, needs }) => ({ key, label, caution, needs }),
  );

/** Where a hold point stands after its events, oldest first: the last one decides. */
export function holdPointState(key: string, events: readonly HoldPointEvent[]): HoldPointState {
  const last = events.findLast((event) => event.key === key);
  return last === undefined || last.outcome === 'reopened' ? 'open' : last.outcome;
}

/** The features that still lack a reading before the point can be ticked. */
export const missingReadings = (
  point: HoldPoint,
  measured: ReadonlySet<MeasuredFeature>,
): MeasuredFeature[] => point.needs.filter((feature) => !measured.has(feature));

/** The points that are neither passed nor overridden. */
export const openHoldPoints = (cycle: Cycle, events: readonly HoldPointEvent[]): HoldPoint[] =>
  holdPointsOf(cycle).filter((point) => holdPointState(point.key, events) === 'open');
