import type { Cycle } from './vocabulary.ts';

/**
 * What is measured on an engine, where, and in what order. A place is one spot on a feature that gets a
 * reading of its own; its key is kept with the reading and never shown.
 */

/** Base units of the store; a reading is kept as typed beside its value in one of these. */
export type BaseUnit = 'mm' | 'N·m' | 'kPa' | 'Ω' | 'cm3' | '1/min' | ':1';

/** Features that a gauge is put to, in the order of the work. */
export const MEASURED_FEATURES = [
  'bore',
  'piston-skirt',
  'ring-end-gap',
  'ring-side-clearance',
  'crankpin',
  'rod-big-end',
  'rod-bolt-torque',
  'main-journal',
  'crankshaft-end-play',
  'camshaft-end-play',
  'deck-flatness',
  'deck-clearance',
  'head-flatness',
  'gasket-thickness',
  'chamber-volume',
  'valve-stem-intake',
  'valve-stem-exhaust',
  'valve-guide-intake',
  'valve-guide-exhaust',
  'valve-spring-length',
  'seat-width',
  'valve-travel-intake',
  'valve-travel-exhaust',
  'sump-bolt-torque',
  'flywheel-nut-torque',
  'coil-air-gap',
  'valve-lash-intake',
  'valve-lash-exhaust',
  'plug-gap',
  'plug-torque',
  'head-bolt-torque',
  'compression',
  'coil-resistance',
] as const;
export type MeasuredFeature = (typeof MEASURED_FEATURES)[number];

/** What every rebuild measures; the others are asked for where the spec book knows them. */
export const CORE_FEATURES: readonly MeasuredFeature[] = [
  'bore',
  'piston-skirt',
  'ring-end-gap',
  'crankpin',
  'rod-big-end',
  'crankshaft-end-play',
  'head-flatness',
  'coil-air-gap',
  'valve-lash-intake',
  'valve-lash-exhaust',
  'plug-gap',
  'head-bolt-torque',
  'compression',
  'coil-resistance',
];

/** Features that follow from others: they have a specification and a verdict, never a gauge. */
export const DERIVED_FEATURES = [
  'bore-taper',
  'bore-out-of-round',
  'piston-clearance',
  'rod-clearance',
  'bore-wear',
  'crankpin-out-of-round',
  'main-journal-out-of-round',
  'stem-clearance-intake',
  'stem-clearance-exhaust',
  'valve-lift-intake',
  'valve-lift-exhaust',
  'displacement',
  'compression-ratio',
] as const;
export type DerivedFeature = (typeof DERIVED_FEATURES)[number];

/** Features of the running engine: measured in the test run, by tachometer, and nowhere else. */
export const RUN_FEATURES = ['idle-speed', 'top-speed'] as const;
export type RunFeature = (typeof RUN_FEATURES)[number];

export const FEATURES = [...MEASURED_FEATURES, ...DERIVED_FEATURES, ...RUN_FEATURES] as const;
export type Feature = (typeof FEATURES)[number];

export const FEATURE_LABELS: Record<Feature, string> = {
  bore: 'Cylinder bore',
  'piston-skirt': 'Piston skirt',
  'ring-end-gap': 'Ring end gap',
  crankpin: 'Crankpin',
  'rod-big-end': 'Connecting rod big end',
  'crankshaft-end-play': 'Crankshaft end play',
  'head-flatness': 'Head flatness',
  'coil-air-gap': 'Coil air gap',
  'valve-lash-intake': 'Valve lash, intake',
  'valve-lash-exhaust': 'Valve lash, exhaust',
  'plug-gap': 'Spark plug gap',
  'head-bolt-torque': 'Head bolts',
  compression: 'Cranking pressure',
  'coil-resistance': 'Coil resistance',
  'bore-taper': 'Bore taper',
  'bore-out-of-round': 'Bore out-of-round',
  'piston-clearance': 'Piston to bore clearance',
  'rod-clearance': 'Rod bearing clearance',
  'ring-side-clearance': 'Ring side clearance',
  'main-journal': 'Main journal',
  'camshaft-end-play': 'Camshaft end play',
  'deck-flatness': 'Deck flatness',
  'deck-clearance': 'Deck clearance',
  'gasket-thickness': 'Head gasket thickness',
  'chamber-volume': 'Combustion chamber volume',
  'valve-stem-intake': 'Valve stem, intake',
  'valve-stem-exhaust': 'Valve stem, exhaust',
  'valve-guide-intake': 'Valve guide, intake',
  'valve-guide-exhaust': 'Valve guide, exhaust',
  'valve-spring-length': 'Valve spring free length',
  'seat-width': 'Valve seat width',
  'valve-travel-intake': 'Valve travel, intake',
  'valve-travel-exhaust': 'Valve travel, exhaust',
  'rod-bolt-torque': 'Connecting rod bolts',
  'sump-bolt-torque': 'Sump cover bolts',
  'flywheel-nut-torque': 'Flywheel nut',
  'plug-torque': 'Spark plug',
  'bore-wear': 'Bore wear',
  'crankpin-out-of-round': 'Crankpin out-of-round',
  'main-journal-out-of-round': 'Main journal out-of-round',
  'stem-clearance-intake': 'Stem to guide clearance, intake',
  'stem-clearance-exhaust': 'Stem to guide clearance, exhaust',
  'valve-lift-intake': 'Valve lift, intake',
  'valve-lift-exhaust': 'Valve lift, exhaust',
  displacement: 'Displacement',
  'compression-ratio': 'Compression ratio, flat piston',
  'idle-speed': 'Idle speed',
  'top-speed': 'Top speed, no load',
};

export const FEATURE_UNITS: Record<Feature, BaseUnit> = {
  bore: 'mm',
  'piston-skirt': 'mm',
  'ring-end-gap': 'mm',
  crankpin: 'mm',
  'rod-big-end': 'mm',
  'crankshaft-end-play': 'mm',
  'head-flatness': 'mm',
  'coil-air-gap': 'mm',
  'valve-lash-intake': 'mm',
  'valve-lash-exhaust': 'mm',
  'plug-gap': 'mm',
  'head-bolt-torque': 'N·m',
  compression: 'kPa',
  'coil-resistance': 'Ω',
  'bore-taper': 'mm',
  'bore-out-of-round': 'mm',
  'piston-clearance': 'mm',
  'rod-clearance': 'mm',
  'ring-side-clearance': 'mm',
  'main-journal': 'mm',
  'camshaft-end-play': 'mm',
  'deck-flatness': 'mm',
  'deck-clearance': 'mm',
  'gasket-thickness': 'mm',
  'chamber-volume': 'cm3',
  'valve-stem-intake': 'mm',
  'valve-stem-exhaust': 'mm',
  'valve-guide-intake': 'mm',
  'valve-guide-exhaust': 'mm',
  'valve-spring-length': 'mm',
  'seat-width': 'mm',
  'valve-travel-intake': 'mm',
  'valve-travel-exhaust': 'mm',
  'rod-bolt-torque': 'N·m',
  'sump-bolt-torque': 'N·m',
  'flywheel-nut-torque': 'N·m',
  'plug-torque': 'N·m',
  'bore-wear': 'mm',
  'crankpin-out-of-round': 'mm',
  'main-journal-out-of-round': 'mm',
  'stem-clearance-intake': 'mm',
  'stem-clearance-exhaust': 'mm',
  'valve-lift-intake': 'mm',
  'valve-lift-exhaust': 'mm',
  displacement: 'cm3',
  'compression-ratio': ':1',
  'idle-speed': '1/min',
  'top-speed': '1/min',
};

export interface Place {
  key: string;
  /** What people read; empty when a feature has one place only. */
  label: string;
  cylinder: number;
  /** Share of the final figure that the band of this place is multiplied by: 1 but for torque stages. */
  share: number;
}

export interface EngineShape {
  cycle: Cycle;
  cylinders: number;
  /** By what is tightened: shares of the final torque, ascending, the last of them 1. */
  torqueStages: Partial<Record<MeasuredFeature, readonly number[]>>;
}

interface Spot {
  key: string;
  label: string;
  share?: number;
}

const BORE_SPOTS: Spot[] = ['top', 'middle', 'bottom'].flatMap((level) => [
  { key: `${level}-along`, label: `${level}, along the crankshaft` },
  { key: `${level}-across`, label: `${level}, across the crankshaft` },
]);

const RINGS: Spot[] = [
  { key: 'top-ring', label: 'top ring' },
  { key: 'second-ring', label: 'second ring' },
];

const VALVES: Spot[] = [
  { key: 'intake', label: 'intake' },
  { key: 'exhaust', label: 'exhaust' },
];

const TRAVEL: Spot[] = [
  { key: 'closed', label: 'valve closed' },
  { key: 'open', label: 'valve fully open' },
];

const SPOTS: Partial<Record<MeasuredFeature, Spot[]>> = {
  bore: BORE_SPOTS,
  'ring-end-gap': RINGS,
  'ring-side-clearance': RINGS,
  crankpin: [
    { key: 'first', label: 'first direction' },
    { key: 'second', label: 'a quarter turn on' },
  ],
  'main-journal': ['flywheel', 'output'].flatMap((side) => [
    { key: `${side}-first`, label: `${side} side, first direction` },
    { key: `${side}-second`, label: `${side} side, a quarter turn on` },
  ]),
  'valve-spring-length': VALVES,
  'seat-width': VALVES,
  'valve-travel-intake': TRAVEL,
  'valve-travel-exhaust': TRAVEL,
  'coil-air-gap': [
    { key: 'leg-1', label: 'leg 1' },
    { key: 'leg-2', label: 'leg 2' },
  ],
};

/** Features that an engine has once, however many cylinders it has. */
const ONCE: readonly MeasuredFeature[] = [
  'main-journal',
  'crankshaft-end-play',
  'camshaft-end-play',
  'coil-resistance',
  'coil-air-gap',
  'sump-bolt-torque',
  'flywheel-nut-torque',
];

const FOUR_STROKE_ONLY: readonly MeasuredFeature[] = [
  'camshaft-end-play',
  'valve-lash-intake',
  'valve-lash-exhaust',
  'valve-stem-intake',
  'valve-stem-exhaust',
  'valve-guide-intake',
  'valve-guide-exhaust',
  'valve-spring-length',
  'seat-width',
  'valve-travel-intake',
  'valve-travel-exhaust',
  'sump-bolt-torque',
];

/** The features that an engine of this shape is measured on, in the order of the work. */
export const measuredFeaturesOf = (shape: EngineShape): MeasuredFeature[] =>
  MEASURED_FEATURES.filter(
    (feature) => shape.cycle === 'four-stroke' || !FOUR_STROKE_ONLY.includes(feature),
  );

const spotsOf = (feature: MeasuredFeature, shape: EngineShape): Spot[] => {
  if (feature === 'head-bolt-torque')
    return stagesOf(shape.torqueStages[feature] ?? USUAL_HEAD_STAGES, null);
  const stages = shape.torqueStages[feature] ?? [];
  // Where the book learns of stages later, the final torque that was pulled before keeps its place.
  return stages.length > 1
    ? stagesOf(stages, ONLY)
    : (SPOTS[feature] ?? [{ key: ONLY, label: '' }]);
};

/** The place of a feature that has one. */
const ONLY = 'only';

/** Head bolts are tightened in two steps at least when no source says how. */
const USUAL_HEAD_STAGES = [0.5, 1];

const stagesOf = (stages: readonly number[], lastKey: string | null): Spot[] =>
  stages.map((share, index) => ({
    key: index === stages.length - 1 && lastKey !== null ? lastKey : `stage-${index + 1}`,
    label: `stage ${index + 1} of ${stages.length}`,
    share,
  }));

/**
 * The places of a feature on an engine of this shape, in the order in which they are measured.
 * @throws RangeError when the number of cylinders is not 1 to 4
 */
export function placesOf(feature: MeasuredFeature, shape: EngineShape): Place[] {
  if (!Number.isInteger(shape.cylinders) || shape.cylinders < 1 || shape.cylinders > 4)
    throw new RangeError('A small engine here has one to four cylinders.');
  const cylinders = ONCE.includes(feature) ? 1 : shape.cylinders;
  return Array.from({ length: cylinders }, (_, index) => index + 1).flatMap((cylinder) =>
    spotsOf(feature, shape).map((spot) => ({
      key: `c${cylinder}-${spot.key}`,
      label: [cylinders > 1 ? `cylinder ${cylinder}` : '', spot.label].filter(Boolean).join(', '),
      cylinder,
      share: spot.share ?? 1,
    })),
  );
}
