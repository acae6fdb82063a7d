export { aim, type Band } from './band.ts';
export { type JudgeInput, type Judgement, judge, type Verdict } from './judge.ts';
export { normalBelow, normalBetween } from './normal-distribution.ts';
export { parseReading, type Reading } from './parse-reading.ts';
export { type Slip, type SlipKind, suspectSlip } from './slip.ts';
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
