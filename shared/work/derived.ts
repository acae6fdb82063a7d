import { boreReport, clearance, type MeasuredSize } from '../trade/index.ts';
import type { DerivedFeature, MeasuredFeature } from './features.ts';
import type { Phase } from './vocabulary.ts';

/** What follows from readings: never typed, worked out anew whenever it is looked at. */

/** A reading that stands (not superseded), the latest of its place and phase. Base units. */
export interface StandingReading {
  feature: MeasuredFeature;
  /** Key of the place, as `placesOf` gives it. */
  place: string;
  cylinder: number;
  phase: Phase;
  value: number;
  /** Expanded, k = 2. */
  uncertainty: number;
}

export interface DerivedValue extends MeasuredSize {
  feature: DerivedFeature;
  cylinder: number;
  phase: Phase;
}

const sizes = (readings: readonly StandingReading[], feature: MeasuredFeature) =>
  readings.filter((reading) => reading.feature === feature);

const smallest = (readings: readonly StandingReading[]) =>
  readings.reduce((a, b) => (b.value < a.value ? b : a));

const largest = (readings: readonly StandingReading[]) =>
  readings.reduce((a, b) => (b.value > a.value ? b : a));

/** `c1-top-along` is the level `top` and the axis `along`. */
function spotOf(place: string): { level: string; axis: string } {
  const [, level = '', axis = ''] = place.split('-');
  return { level, axis };
}

function fromBore(bore: readonly StandingReading[]): [DerivedFeature, MeasuredSize][] {
  const [first] = bore;
  if (first === undefined) return [];
  const { taper, outOfRound } = boreReport(
    bore.map(({ place, value }) => ({ ...spotOf(place), value })),
    { nominal: first.value, oversizes: [], allowance: 0 },
  );
  // Both are differences of two readings of one gauge: the uncertainties add as the root of squares.
  const uncertainty = Math.hypot(largest(bore).uncertainty, smallest(bore).uncertainty);
  const spots = bore.map(({ place }) => spotOf(place));
  const repeats = (of: (spot: { level: string; axis: string }) => string) =>
    new Set(spots.map(of)).size < spots.length;
  const values: [DerivedFeature, MeasuredSize][] = [];
  if (repeats(({ axis }) => axis)) values.push(['bore-taper', { value: taper, uncertainty }]);
  if (repeats(({ level }) => level))
    values.push(['bore-out-of-round', { value: outOfRound, uncertainty }]);
  return values;
}

function fromPair(
  feature: DerivedFeature,
  outer: StandingReading[],
  inner: StandingReading[],
): [DerivedFeature, MeasuredSize][] {
  if (outer.length === 0 || inner.length === 0) return [];
  // The tightest spot decides: smallest hole, largest shaft.
  return [[feature, clearance(smallest(outer), largest(inner))]];
}

/** Every value that the readings give, by cylinder and phase. */
export function derivedFrom(readings: readonly StandingReading[]): DerivedValue[] {
  const groups = Map.groupBy(readings, ({ cylinder, phase }) => `${phase} ${cylinder}`);
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const { cylinder, phase } = first;
    return [
      ...fromBore(sizes(group, 'bore')),
      ...fromPair('piston-clearance', sizes(group, 'bore'), sizes(group, 'piston-skirt')),
      ...fromPair('rod-clearance', sizes(group, 'rod-big-end'), sizes(group, 'crankpin')),
    ].map(([feature, size]) => ({ feature, cylinder, phase, ...size }));
  });
}
