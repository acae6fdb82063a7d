import { BASE_UNIT_OF, convert, dimensionOf, type Unit } from '../../../trade/index.ts';

/** What a figure says of the gauge that it was read on. */

/** Somebody reads between two marks, or types what was worked out. */
const FINER_THAN_GAUGE = 0.004;
/** A figure of as many decimals that lies between two steps: two leaves of a feeler set put together. */
const BETWEEN_STEPS = 0.2;
const DUST = 1e-6;

/** The same of a gauge that nobody named: it may be a finer one. */
const FINER_THAN_USUAL = 0.1;

/** Steps of a gauge, in the unit of the figures that it shows. */
export interface GaugeStep {
  readonly size: number;
  /** Whether the gauge was named, or is only the usual one. */
  readonly known: boolean;
}

/**
 * How readily a figure is read on a gauge of these steps: 1 where it is one of them.
 * @param value in the unit of the steps
 */
export function stepChance(value: number, { size, known }: GaugeStep): number {
  const steps = value / size;
  if (Math.abs(steps - Math.round(steps)) < DUST * Math.max(1, Math.abs(steps))) return 1;
  const finer = decimalsOf(value) > decimalsOf(size);
  if (!known) return finer ? FINER_THAN_USUAL : 1;
  return finer ? FINER_THAN_GAUGE : BETWEEN_STEPS;
}

const decimalsOf = (value: number): number =>
  (/\.(\d+)/.exec(String(Number(value.toFixed(9))))?.[1] ?? '').length;

/**
 * Gauges that read in another unit than the field's: the step that their figures are usually given in, and
 * the finest that they show. Common practice, no source.
 */
const FOREIGN_STEPS: Partial<Record<Unit, { readonly usual: number; readonly finest: number }>> = {
  in: { usual: 0.001, finest: 0.0001 },
  thou: { usual: 1, finest: 0.5 },
  mm: { usual: 0.01, finest: 0.001 },
  kPa: { usual: 5, finest: 5 },
  psi: { usual: 2, finest: 1 },
  N·m: { usual: 1, finest: 0.5 },
  bar: { usual: 0.1, finest: 0.05 },
  lbf·ft: { usual: 1, finest: 0.5 },
  lbf·in: { usual: 5, finest: 1 },
  kgf·m: { usual: 0.05, finest: 0.01 },
  kgf·cm: { usual: 5, finest: 1 },
  Ω: { usual: 10, finest: 0.01 },
  kΩ: { usual: 0.1, finest: 0.001 },
};

/**
 * How much of the spread, base unit, one figure of a gauge in another unit takes in, with how readily such
 * a gauge shows it.
 * @param value in `unit`
 * @param step of the field's gauge, base unit; no other gauge is taken to be finer
 */
export function foreignStepChance(value: number, unit: Unit, step: number): number {
  const steps = FOREIGN_STEPS[unit];
  if (steps === undefined) return step;
  const usual = convert(steps.usual, unit, BASE_UNIT_OF[dimensionOf(unit)]);
  // No leaf is as thin as a step or two of what the unit is counted in.
  const tooSmall = Math.abs(value) < 2 * steps.usual ? BETWEEN_STEPS : 1;
  return Math.max(step, usual) * stepChance(value, { size: steps.finest, known: true }) * tooSmall;
}

/** The finest step in `unit` of the gauges that this feature is usually read on; null where any figure will do. */
export const usualStep = (unit: Unit, ownUnit: Unit, ownStep: number): number | null =>
  unit === ownUnit ? ownStep : (FOREIGN_STEPS[unit]?.finest ?? null);
