import { convert, type Unit } from '../../shared/trade/index.ts';
import { type LashPosition, wantsPosition } from '../../shared/work/bench/lash-position.ts';
import {
  type EngineShape,
  type MeasuredFeature,
  measuredFeaturesOf,
  placesOf,
} from '../../shared/work/features.ts';
import type { Phase } from '../../shared/work/vocabulary.ts';
import type { DemoEngine, DemoSpecification, SpecificationUnit } from './engines/engine.ts';
import type { GaugeKey } from './gauges.ts';
import { scatter } from './random.ts';

/** Invented readings: what a gauge would say of an engine that is as worn as the story tells. */

export interface DemoReading {
  feature: MeasuredFeature;
  place: string;
  text: string;
  unit: SpecificationUnit;
  gauge: GaugeKey;
  phase: Phase;
  /** Where the engine stood, for valve lash. */
  position: LashPosition | null;
}

export const shapeOfDemo = (engine: DemoEngine): EngineShape => ({
  cycle: engine.cycle,
  cylinders: engine.cylinders,
  torqueStages: Object.fromEntries(
    Object.entries(engine.specifications).flatMap(([feature, { fastener }]) =>
      fastener === undefined ? [] : [[feature, fastener.stages]],
    ),
  ),
});

/** The gauge for a size, by what it measures and how large it is. */
function gaugeFor(feature: MeasuredFeature, value: number, unit: SpecificationUnit): GaugeKey {
  switch (feature) {
    case 'bore':
    case 'rod-big-end':
      return mm(value, unit) < 35 ? 'bore-35' : 'bore-100';
    case 'valve-guide-intake':
    case 'valve-guide-exhaust':
      return 'small-hole';
    case 'piston-skirt':
    case 'crankpin':
    case 'valve-stem-intake':
    case 'valve-stem-exhaust':
      return micrometer(mm(value, unit));
    case 'crankshaft-end-play':
      return 'dial';
    case 'gasket-thickness':
      return 'micrometer-25';
    case 'deck-clearance':
      return 'micrometer-depth';
    case 'chamber-volume':
      return 'burette';
    case 'plug-gap':
      return 'plug-wire';
    case 'head-bolt-torque':
    case 'rod-bolt-torque':
    case 'flywheel-nut-torque':
      return convert(value, unit, 'N·m') < 6 ? 'wrench-20' : 'wrench-60';
    case 'compression':
      return 'pressure';
    case 'coil-resistance':
      return 'ohmmeter';
    default:
      return unit === 'in' ? 'feeler-in' : 'feeler-mm';
  }
}

const mm = (value: number, unit: Unit) => convert(value, unit, 'mm');

function micrometer(size: number): GaugeKey {
  if (size <= 25) return 'micrometer-25';
  if (size <= 50) return 'micrometer-50';
  return size <= 75 ? 'micrometer-75' : 'micrometer-100';
}

const FINE: readonly MeasuredFeature[] = [
  'bore',
  'piston-skirt',
  'crankpin',
  'rod-big-end',
  'valve-stem-intake',
  'valve-stem-exhaust',
  'valve-guide-intake',
  'valve-guide-exhaust',
];

/** Decimals that the gauge shows in that unit. */
function decimals(feature: MeasuredFeature, unit: SpecificationUnit): number {
  if (unit === 'in') return FINE.includes(feature) ? 4 : 3;
  if (unit === 'mm') return FINE.includes(feature) ? 3 : 2;
  if (unit === 'kΩ') return 2;
  return unit === 'kPa' || unit === 'psi' || unit === 'lbf·in' ? 0 : 1;
}

/** As a mechanic types it: inches below one without the nought. */
function typed(value: number, feature: MeasuredFeature, unit: SpecificationUnit): string {
  // A compression gauge is read to its marks, ten kPa apart.
  const read = unit === 'kPa' ? Math.round(value / 10) * 10 : value;
  const text = read.toFixed(decimals(feature, unit));
  return unit === 'in' ? text.replace(/^0\./, '.') : text;
}

const number = (text: string | undefined): number | undefined =>
  text === undefined ? undefined : Number(text);

/** What a sound part measures: about the aim, within a sixth of the band either way. */
function sound(specification: DemoSpecification, random: () => number): number {
  const low = number(specification.low);
  const high = number(specification.high);
  if (low === undefined) return (high ?? 0) * (0.35 + random() * 0.2);
  if (high === undefined) return low * (1.15 + random() * 0.12);
  const target = number(specification.aim) ?? (low + high) / 2;
  return target + (random() - 0.5) * 0.32 * (high - low);
}

/** What a worn part measures: from the edge of the band towards its wear limit, and past it above 1. */
function worn(specification: DemoSpecification, wear: number, random: () => number): number {
  const limit = number(specification.wearLimit);
  const low = number(specification.low);
  const high = number(specification.high);
  if (limit === undefined) {
    if (low === undefined) return (high ?? 0) * (0.4 + wear * 0.8);
    if (high === undefined) return low * (1.1 - wear * 0.35);
    return high + (high - low) * wear * 0.4;
  }
  const shrinks = low !== undefined && limit < low;
  const edge = shrinks ? low : (high ?? low ?? limit);
  return edge + (limit - edge) * wear * (0.9 + random() * 0.2);
}

/** The upper part of a bore wears most, and across the crankshaft more than along it. */
function shareOfWear(place: string): number {
  const depth = place.includes('top') ? 1 : place.includes('middle') ? 0.7 : 0.35;
  return place.includes('along') ? depth * 0.7 : depth;
}

/** As the source asks: some engines have a release that holds the valve at dead centre. */
const lashPosition = ({ condition = '' }: DemoSpecification): LashPosition =>
  condition.includes('past') ? 'just-past-top-dead-centre' : 'at-top-dead-centre';

/** What a machine shows before anybody adjusts anything. */
const RECEIVED: readonly MeasuredFeature[] = [
  'deck-clearance',
  'gasket-thickness',
  'chamber-volume',
  'bore',
  'piston-skirt',
  'ring-end-gap',
  'crankpin',
  'rod-big-end',
  'crankshaft-end-play',
  'head-flatness',
  'valve-stem-intake',
  'valve-stem-exhaust',
  'valve-guide-intake',
  'valve-guide-exhaust',
  'coil-air-gap',
  'valve-lash-intake',
  'valve-lash-exhaust',
  'compression',
];

/** What running doesn't change. */
const UNWORN: readonly MeasuredFeature[] = ['deck-clearance', 'gasket-thickness', 'chamber-volume'];

interface Asked {
  engine: DemoEngine;
  seed: string;
  features: readonly MeasuredFeature[];
}

function readingsAt(
  { engine, seed, features }: Asked,
  phase: Phase,
  value: (
    specification: DemoSpecification,
    place: { key: string; cylinder: number; share: number },
    feature: MeasuredFeature,
    random: () => number,
  ) => number,
): DemoReading[] {
  const random = scatter(`${seed} ${phase}`);
  const shape = shapeOfDemo(engine);
  return measuredFeaturesOf(shape)
    .filter((feature) => features.includes(feature))
    .flatMap((feature) => {
      const specification = engine.specifications[feature];
      if (specification === undefined) return [];
      const { unit } = specification;
      return placesOf(feature, shape).map((place): DemoReading => {
        const size = value(specification, place, feature, random);
        return {
          feature,
          place: place.key,
          text: typed(size, feature, unit),
          unit,
          gauge: gaugeFor(feature, size, unit),
          phase,
          position: wantsPosition(feature) ? lashPosition(specification) : null,
        };
      });
    });
}

/** The order in which a build is measured: from the crankcase outwards, the running engine last. */
const BUILD_ORDER: readonly MeasuredFeature[] = [
  'bore',
  'piston-skirt',
  'crankpin',
  'rod-big-end',
  'rod-bolt-torque',
  'ring-end-gap',
  'crankshaft-end-play',
  'deck-clearance',
  'head-flatness',
  'gasket-thickness',
  'chamber-volume',
  'valve-stem-intake',
  'valve-stem-exhaust',
  'valve-guide-intake',
  'valve-guide-exhaust',
  'head-bolt-torque',
  'flywheel-nut-torque',
  'coil-resistance',
  'coil-air-gap',
  'valve-lash-intake',
  'valve-lash-exhaust',
  'plug-gap',
  'compression',
];

/** Set to a figure rather than measured: a wrench clicks at it, a wire slides or does not. */
const SET: readonly MeasuredFeature[] = [
  'head-bolt-torque',
  'rod-bolt-torque',
  'flywheel-nut-torque',
  'plug-gap',
];

/** Readings of the finished build, in the order of the build. */
export const finalReadings = (asked: Asked): DemoReading[] =>
  readingsAt(asked, 'final', (specification, place, feature, random) =>
    SET.includes(feature)
      ? (number(specification.aim) ?? 0) * place.share
      : sound(specification, random),
  ).sort((a, b) => BUILD_ORDER.indexOf(a.feature) - BUILD_ORDER.indexOf(b.feature));

/**
 * Readings as received.
 * @param wear 0: at the edge of the band; 1: at the wear limit; more: past it
 * @param worstCylinder the other ones are worn a third as much
 */
export const receivedReadings = (
  asked: Asked & { wear: number; worstCylinder?: number },
): DemoReading[] =>
  readingsAt(
    { ...asked, features: asked.features.filter((feature) => RECEIVED.includes(feature)) },
    'as-received',
    (specification, place, feature, random) => {
      if (UNWORN.includes(feature)) return sound(specification, random);
      const spared = asked.worstCylinder !== undefined && asked.worstCylinder !== place.cylinder;
      const wear = asked.wear * (spared ? 1 / 3 : 1);
      return worn(specification, feature === 'bore' ? wear * shareOfWear(place.key) : wear, random);
    },
  );
