export { airPressure } from './atmosphere.ts';
export { aim, type Band } from './band.ts';
export {
  type BoreReading,
  type BoreReport,
  type BoreSpecification,
  boreReport,
} from './bore.ts';
export { CRANKING_EXPONENT, type Cranking, crankingPressure } from './cranking.ts';
export {
  type CombustionSpace,
  type Cylinders,
  compressionRatio,
  sweptVolume,
} from './displacement.ts';
export { display, displayNumber, unitLabel } from './display.ts';
export { difference } from './exact.ts';
export {
  type Bolt,
  DEFAULT_NUT_FACTOR,
  proofLoad,
  type StatedTorque,
  stressArea,
  type Thread,
  type Tightening,
  type TorquePlausibility,
  tighteningTorque,
  torquePlausibility,
} from './fastener.ts';
export { type FuelMix, fuelMix } from './fuel-mix.ts';
export { type JudgeInput, type Judgement, judge, type Verdict } from './judge.ts';
export { plainCharacters } from './keyboard.ts';
export { normalBelow, normalBetween } from './normal-distribution.ts';
export { parseReading, type Reading } from './parse-reading.ts';
export { propagate } from './propagate.ts';
export {
  isPropertyClass,
  PROPERTY_CLASSES,
  type PropertyClass,
  proofStress,
} from './property-class.ts';
export { COPPER_COEFFICIENT, resistanceAt20, type WindingReading } from './resistance.ts';
export { type RingGapRule, ringGap } from './ring-gap.ts';
export { meanUncertainty, repeated, type Settling, settle, type Unsettled } from './settle.ts';
export { type Slip, type SlipKind, suspectSlip } from './slip.ts';
export { EXPANSION_COEFFICIENTS, REFERENCE_TEMPERATURE, toReference } from './temperature.ts';
export { type NamedThread, parseThread, sameThread, threadName, USUAL_THREADS } from './thread.ts';
export {
  TIGHTENING_PATTERNS,
  type TighteningPattern,
  tighteningOrder,
  torqueStages,
} from './torque-sequence.ts';
export {
  COVERAGE_FACTOR,
  clearance,
  type Gauge,
  gaugeUncertainty,
  type MeasuredSize,
} from './uncertainty.ts';
export {
  BASE_UNIT_OF,
  convert,
  type Dimension,
  dimensionOf,
  isUnit,
  toBase,
  UNITS,
  type Unit,
  unitsOf,
} from './units.ts';
export { type FittedLine, fitLine, type Point } from './wear-trend.ts';
export { type ExtendedWrench, wrenchSetting } from './wrench.ts';
