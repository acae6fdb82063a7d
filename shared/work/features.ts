import type { Cycle } from './vocabulary.ts';

/**
 * What is measured on an engine, where, and in what order. A place is one spot on a feature that gets a
 * reading of its own; its key is kept with the reading and never shown.
 */

/** Base units of the store; a reading is kept as typed beside its value in one of these. */
export type BaseUnit = 'mm' | 'N·m' | 'kPa' | 'Ω';

/** Features that a gauge is put to. */
export const MEASURED_FEATURES = [
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
] as const;
export type MeasuredFeature = (typeof MEASURED_FEATURES)[number];

/** Features that follow from others: they have a specification and a verdict, never a gauge. */
export const DERIVED_FEATURES = [
  'bore-taper',
  'bore-out-of-round',
  'piston-clearance',
  'rod-clearance',
] as const;
export type DerivedFeature = (typeof DERIVED_FEATURES)[number];

export const FEATURES = [...MEASURED_FEATURES, ...DERIVED_FEATURES] as const;
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
};

/** How to take the reading, in a sentence, with the caution that belongs to it. */
export const FEATURE_HINTS: Record<MeasuredFeature, string> = {
  bore: 'At three depths, along the crankshaft and across it. Wipe the bore dry and let it come to room temperature.',
  'piston-skirt': 'Across the thrust faces, at the height that the source names.',
  'ring-end-gap': 'Ring squared in the bore with the piston crown, below the ridge.',
  crankpin: 'At two directions a quarter turn apart.',
  'rod-big-end': 'Cap fitted the right way round and tightened to its figure.',
  'crankshaft-end-play': 'Dial indicator on the end of the shaft, pushed home and pulled.',
  'head-flatness':
    'Straightedge and the thickest leaf that slides under, six directions; note the worst.',
  'coil-air-gap':
    'Plug lead off and earthed. Magnet under the coil, leaf in at each leg while the screws are tightened.',
  'valve-lash-intake': 'Cold, on the compression stroke, at or just past top dead centre.',
  'valve-lash-exhaust': 'Cold, on the compression stroke, at or just past top dead centre.',
  'plug-gap': 'Round wire gauge; bend the side electrode only.',
  'head-bolt-torque':
    'In the order and the stages given, smooth pull, threads as the source asks (dry or oiled).',
  compression:
    'Plug lead earthed, throttle open, battery or arm at its usual speed. A compression release lowers the figure.',
  'coil-resistance': 'Leads disconnected; note the temperature.',
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
  /** Shares of the final torque, ascending, the last of them 1. */
  torqueStages: readonly number[];
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

const SPOTS: Partial<Record<MeasuredFeature, Spot[]>> = {
  bore: BORE_SPOTS,
  'ring-end-gap': [
    { key: 'top-ring', label: 'top ring' },
    { key: 'second-ring', label: 'second ring' },
  ],
  crankpin: [
    { key: 'first', label: 'first direction' },
    { key: 'second', label: 'a quarter turn on' },
  ],
  'coil-air-gap': [
    { key: 'leg-1', label: 'leg 1' },
    { key: 'leg-2', label: 'leg 2' },
  ],
};

/** Features that an engine has once, however many cylinders it has. */
const ONCE: readonly MeasuredFeature[] = ['crankshaft-end-play', 'coil-resistance', 'coil-air-gap'];

const FOUR_STROKE_ONLY: readonly MeasuredFeature[] = ['valve-lash-intake', 'valve-lash-exhaust'];

/** The features that an engine of this shape is measured on, in the order of the work. */
export const measuredFeaturesOf = (shape: EngineShape): MeasuredFeature[] =>
  MEASURED_FEATURES.filter(
    (feature) => shape.cycle === 'four-stroke' || !FOUR_STROKE_ONLY.includes(feature),
  );

const spotsOf = (feature: MeasuredFeature, shape: EngineShape): Spot[] => {
  if (feature === 'head-bolt-torque')
    return shape.torqueStages.map((share, index) => ({
      key: `stage-${index + 1}`,
      label: `stage ${index + 1} of ${shape.torqueStages.length}`,
      share,
    }));
  return SPOTS[feature] ?? [{ key: 'only', label: '' }];
};

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
