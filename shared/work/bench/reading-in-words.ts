import { type Unit, unitLabel } from '../../trade/index.ts';

/** A reading as people read it, the same on screens and papers. */

/** The unit that the other half of the trade reads. */
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
  cm3: 'in3',
  in3: 'cm3',
};

/** The unit of the other system; undefined where both systems use one unit. */
export const otherUnit = (unit: Unit): Unit | undefined => COUNTERPART[unit];

/** A reading as it was typed, with its unit (after a no-break space) unless that was typed too. */
export const asTyped = ({ text, unit }: { text: string; unit: Unit }): string =>
  /[\p{L}"″”'′°µ%]/u.test(text) ? text : `${text}\u00A0${unitLabel(unit)}`;
