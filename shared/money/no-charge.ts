import type { DiscountRule } from './line.ts';

const WHOLE: DiscountRule = { by: 'share', ppm: 1_000_000 };

/** Lines that nobody is charged for: priced as ever, all of it taken off again. Their cost stays. */
export const atNoCharge = <Line extends { readonly discount?: DiscountRule | null }>(
  lines: readonly Line[],
): (Line & { discount: DiscountRule })[] => lines.map((line) => ({ ...line, discount: WHOLE }));
