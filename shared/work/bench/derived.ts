import { boreReport, clearance, difference, type MeasuredSize } from '../../trade/index.ts';
import type { DerivedFeature, MeasuredFeature } from '../features.ts';
import type { Phase } from '../vocabulary.ts';
import { displacementOf, ratioOf } from './derived-volumes.ts';
import { whyImpossible } from './possible-reading.ts';

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
  /** 0 for what belongs to the engine as a whole. */
  cylinder: number;
  phase: Phase;
  /** Of a clearance that isn't the same all round: at its loosest spot; `value` is the tightest. */
  largest: MeasuredSize | null;
}

/** What the engine's entry in the spec book says of it, mm; null where it doesn't. */
export interface EngineSizes {
  bore: number | null;
  stroke: number | null;
  cylinders: number;
  /** How far over nominal a cylinder is bored in a phase, mm; nothing is when it isn't given. */
  boreStep?: (cylinder: number, phase: Phase) => number;
}

const NOTHING_KNOWN: EngineSizes = { bore: null, stroke: null, cylinders: 1 };

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

type Named = [DerivedFeature, MeasuredSize, largest?: MeasuredSize | null];

function fromBore(bore: readonly StandingReading[]): Named[] {
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
  const values: Named[] = [];
  if (repeats(({ axis }) => axis)) values.push(['bore-taper', { value: taper, uncertainty }]);
  if (repeats(({ level }) => level))
    values.push(['bore-out-of-round', { value: outOfRound, uncertainty }]);
  return values;
}

function fromPair(
  feature: DerivedFeature,
  outer: StandingReading[],
  inner: StandingReading[],
): Named[] {
  if (outer.length === 0 || inner.length === 0) return [];
  // A part may seize at its tightest spot and knock at its loosest: both are told and judged.
  const tightest = clearance(smallest(outer), largest(inner));
  const loosest = clearance(largest(outer), smallest(inner));
  return [[feature, tightest, loosest.value === tightest.value ? null : loosest]];
}

/** Wear is counted from the size that the bore was new, and the most worn spot decides. */
function fromWear(bore: readonly StandingReading[], nominal: number | null) {
  if (bore.length === 0 || nominal === null) return [];
  const { value, uncertainty } = largest(bore);
  return [['bore-wear', { value: difference(value, nominal), uncertainty }]] satisfies Named[];
}

/** What the bore was when new: nominal, and the oversize that it has in that phase. */
const newBore = (phase: Phase, cylinder: number, { bore, boreStep }: EngineSizes) =>
  bore === null ? null : bore + (boreStep?.(cylinder, phase) ?? 0);

/** The largest difference of two directions of one journal; each direction read by one gauge. */
function outOfRound(
  feature: DerivedFeature,
  journal: readonly StandingReading[],
  sideOf: (place: string) => string,
): Named[] {
  const pairs = [...Map.groupBy(journal, ({ place }) => sideOf(place)).values()].filter(
    (side) => side.length > 1,
  );
  const spreads = pairs.map((side) => clearance(largest(side), smallest(side)));
  return spreads.length === 0
    ? []
    : [[feature, spreads.reduce((a, b) => (b.value > a.value ? b : a))]];
}

/** Lift at the valve: what the dial moved from closed to open. */
function fromTravel(feature: DerivedFeature, travel: readonly StandingReading[]): Named[] {
  const at = (spot: string) => travel.find(({ place }) => place.endsWith(spot));
  const [closed, open] = [at('-closed'), at('-open')];
  if (closed === undefined || open === undefined) return [];
  return [
    [
      feature,
      {
        value: Math.abs(difference(open.value, closed.value)),
        uncertainty: Math.hypot(open.uncertainty, closed.uncertainty),
      },
    ],
  ];
}

const fromValve = (valve: 'intake' | 'exhaust', group: readonly StandingReading[]): Named[] => [
  ...fromPair(
    `stem-clearance-${valve}`,
    sizes(group, `valve-guide-${valve}`),
    sizes(group, `valve-stem-${valve}`),
  ),
  ...fromTravel(`valve-lift-${valve}`, sizes(group, `valve-travel-${valve}`)),
];

/** `c1-output-second` is one of the two directions of the output side's journal. */
const journalSide = (place: string): string => place.split('-')[1] ?? '';

const named =
  (cylinder: number, phase: Phase) =>
  ([feature, size, loosest]: Named): DerivedValue => ({
    feature,
    cylinder,
    phase,
    ...size,
    largest: loosest ?? null,
  });

/** What belongs to the engine as a whole, by phase. */
function ofEngine(
  group: readonly StandingReading[],
  phase: Phase,
  engine: EngineSizes,
): DerivedValue[] {
  const values: Named[] = outOfRound(
    'main-journal-out-of-round',
    sizes(group, 'main-journal'),
    journalSide,
  );
  const volume = displacementOf(sizes(group, 'bore'), engine);
  if (volume !== null) values.push(['displacement', volume]);
  return values.map(named(0, phase));
}

function ofCylinder(
  group: readonly StandingReading[],
  phase: Phase,
  cylinder: number,
  engine: EngineSizes,
): DerivedValue[] {
  const bore = sizes(group, 'bore');
  const ratio = ratioOf({
    bore,
    chamber: sizes(group, 'chamber-volume'),
    gasket: sizes(group, 'gasket-thickness'),
    deck: sizes(group, 'deck-clearance'),
    stroke: engine.stroke,
  });
  const values: Named[] = [
    ...fromBore(bore),
    ...fromWear(bore, newBore(phase, cylinder, engine)),
    ...fromPair('piston-clearance', bore, sizes(group, 'piston-skirt')),
    ...fromPair('rod-clearance', sizes(group, 'rod-big-end'), sizes(group, 'crankpin')),
    ...outOfRound('crankpin-out-of-round', sizes(group, 'crankpin'), () => 'pin'),
    ...fromValve('intake', group),
    ...fromValve('exhaust', group),
  ];
  if (ratio !== null) values.push(['compression-ratio', ratio]);
  return values.map(named(cylinder, phase));
}

/**
 * Every value that the readings give, by phase and cylinder.
 * @param engine what the spec book says of the engine; without it wear and volumes are left out
 */
export function derivedFrom(
  readings: readonly StandingReading[],
  engine: EngineSizes = NOTHING_KNOWN,
): DerivedValue[] {
  // A store from before such readings were refused may hold one: it must not hide all the others.
  const possible = readings.filter(({ feature, value }) => whyImpossible(feature, value) === null);
  return [...Map.groupBy(possible, ({ phase }) => phase)].flatMap(([phase, taken]) => [
    ...[...Map.groupBy(taken, ({ cylinder }) => cylinder)].flatMap(([cylinder, group]) =>
      ofCylinder(group, phase, cylinder, engine),
    ),
    ...ofEngine(taken, phase, engine),
  ]);
}
