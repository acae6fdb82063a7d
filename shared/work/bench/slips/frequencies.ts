import type { Unit } from '../../../trade/index.ts';

/**
 * How often each slip is made, as a share of all readings. Common practice, no source: set so that what is
 * asked is asked with good reason, and checked against a table of wrong and right readings.
 */
export const SLIP_FREQUENCIES = {
  /** The point so many places off, to one side. */
  decimal: { 1: 0.008, 2: 0.003, 3: 0.002, 4: 0.0005 },
  /** No point at all, where so many decimals were meant. */
  pointLeftOut: { 1: 0.008, 2: 0.008, 3: 0.008, 4: 0.004 },
  /** A mark between thousands that was read as a decimal one. */
  thousands: 0.02,
  unit: 0.012,
  unitAlthoughTyped: 0.006,
  transposed: 0.006,
  leadingDropped: 0.004,
  dropped: 0.002,
  doubled: 0.004,
  sleeve: 0.012,
  frame: 0.003,
  deviation: 0.01,
  /** Anything else: another part, another line of the page, a cat on the keys. */
  unexplained: 0.002,
} as const;

/**
 * How readily the figure of a unit gets into the field of another of its dimension. Pressure gauges have two
 * scales on one dial, and meters change from ohms to kilohms by themselves.
 */
export const UNIT_MIXED_UP: Partial<Record<Unit, number>> = {
  mm: 0.5,
  in: 0.5,
  thou: 0.7,
  um: 0.05,
  N·m: 0.5,
  lbf·ft: 0.5,
  lbf·in: 0.5,
  kgf·m: 0.2,
  kgf·cm: 0.1,
  kPa: 1.2,
  psi: 1.5,
  bar: 1,
  inHg: 0.01,
  Ω: 0.8,
  kΩ: 0.8,
  cm3: 0.3,
  ml: 0.3,
  in3: 0.3,
  L: 0.1,
};
