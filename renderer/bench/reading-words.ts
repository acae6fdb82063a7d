import type { Reading } from '../../shared/contract/bench.ts';
import { display, type Unit, unitLabel } from '../../shared/trade/index.ts';
import { likelyText } from '../common/measure/measure-words.ts';

/** A reading as it was typed, with its unit unless that was typed too. */
export const asTyped = ({ text, unit }: Pick<Reading, 'text' | 'unit'>): string =>
  /[^\d.,/+\s-]/.test(text) ? text : `${text}\u00A0${unitLabel(unit)}`;

const COUNTERPART: Partial<Record<Unit, Unit>> = {
  mm: 'in',
  um: 'thou',
  in: 'mm',
  thou: 'mm',
  N·m: 'lbf·ft',
  lbf·ft: 'N·m',
  lbf·in: 'N·m',
  kgf·m: 'N·m',
  kgf·cm: 'N·m',
  kPa: 'psi',
  psi: 'kPa',
  bar: 'psi',
};

/** The same value in the unit of the other system; empty where both systems use one unit. */
export function inOtherUnit(valueBase: number, unit: Unit): string {
  const other = COUNTERPART[unit];
  return other === undefined ? '' : display(valueBase, other);
}

/** What has to be said beside a reading: its gauge, what ails it, and a slip that was waved on. */
export const remarksOf = (reading: Reading): string[] =>
  [
    reading.gauge?.name ?? '',
    reading.gaugeRemark,
    reading.temperature === null ? '' : `part at ${display(reading.temperature, '°C')}`,
    reading.questioned === null
      ? ''
      : `kept as typed; ${likelyText(reading.questioned.likely)} was asked about`,
  ].filter((remark) => remark !== '');
