import { demandMinor } from './amount.ts';
import type { BillLine } from './bill.ts';
import { discountOn } from './line.ts';
import type { Rounding } from './round.ts';

/** Rags, solvent, sealant: charged as a share of some kinds of line, at most a cap. */
export interface SuppliesRule {
  /** Millionths: 50000 is 5 %. */
  readonly ppm: number;
  readonly kinds: readonly string[];
  /** Minor units; null for no cap. */
  readonly cap: number | null;
}

/** Whether a line's price follows from the others by the shop's rule. */
export const isByRule = (line: { readonly priceFrom?: string }): boolean =>
  line.priceFrom === 'supplies-rule';

/**
 * The supplies charge on lines, in minor units; nothing without a rule.
 * @throws RangeError when an amount is no whole number
 */
export function suppliesCharge(
  lines: readonly BillLine[],
  rule: SuppliesRule | null,
  rounding: Rounding,
): number {
  if (rule === null) return 0;
  const base = lines
    .filter(({ kind }) => rule.kinds.includes(kind))
    .reduce((sum, { amount }) => sum + amount, 0);
  demandMinor(base);
  const share = discountOn(Math.max(0, base), { by: 'share', ppm: rule.ppm }, rounding);
  return rule.cap === null ? share : Math.min(share, rule.cap);
}
