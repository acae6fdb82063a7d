import { displayNumber, type Slip, toBase, type Unit } from '../../trade/index.ts';

/** More digits than any gauge here shows; what lies beyond them comes from computing. */
const TYPED_DIGITS = 6;
/** A converted figure keeps these at least, however coarsely its unit is usually shown. */
const FEWEST_DIGITS = 3;

/**
 * The value that a slip would explain, as somebody would have typed it. A shifted decimal point keeps the
 * digits that were typed; a figure that comes out of a conversion has no more decimals than readings in its
 * unit are shown with: 15.8333 N·m is 15.8.
 * @param slip `likely` in `unit`
 */
export function likelyReading({ kind, likely }: Slip, unit: Unit): string {
  if (kind === 'decimal') return String(Number(likely.toPrecision(TYPED_DIGITS)));
  const shown = Number(displayNumber(toBase(likely, unit), unit));
  const short = Number(likely.toPrecision(FEWEST_DIGITS));
  return String(Math.abs(shown - likely) <= Math.abs(short - likely) ? shown : short);
}
