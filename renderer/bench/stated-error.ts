import type { Gauge } from '../../shared/contract/bench/index.ts';
import { unitLabel } from '../../shared/trade/index.ts';
import type { GaugeKind } from '../../shared/work/vocabulary.ts';
import { decimal } from '../common/measure/decimal.ts';

/** A gauge's error, as its papers state it and as it is typed. */

const PER_CENT = /\s*(?:%|per ?cent|pct)\s*$/i;

/** `4 %`, `4%`, `0.02`, `±0.02`; null when it is no number. */
export function typedError(text: string): { value: number; inPerCent: boolean } | null {
  const value = decimal(text.trim().replace(/^±\s*/, '').replace(PER_CENT, ''));
  return value === null || value < 0 ? null : { value, inPerCent: PER_CENT.test(text) };
}

/** What the per cent of a gauge's papers are per cent of. */
export const shareOf = (kind: GaugeKind): string =>
  kind === 'torque-wrench' ? 'the setting' : 'the reading';

/** `0.02 mm`, `4 % of the setting`, `1 % of full scale` */
export function errorWords({ kind, unit, maxError, errorKind }: Gauge): string {
  if (errorKind === 'absolute') return `${maxError} ${unitLabel(unit)}`;
  return `${maxError} % of ${errorKind === 'of-full-scale' ? 'full scale' : shareOf(kind)}`;
}

/**
 * How good a reading of it is: an amount; of per cent of what it reads, the amount at the end of its range;
 * of a torque wrench, which is set and not read, what its papers allow.
 */
export function goodTo(gauge: Gauge): string {
  const { kind, unit, uncertainty, errorKind, rangeHigh } = gauge;
  if (kind === 'torque-wrench') return `±${errorWords(gauge)}`;
  const amount = `±${Number(uncertainty.toPrecision(2))} ${unitLabel(unit)}`;
  return errorKind === 'of-reading' ? `${amount} at ${rangeHigh} ${unitLabel(unit)}` : amount;
}
