import { toBase, type Unit } from '../../trade/index.ts';

/** Limits as a source prints them, with their values in the base unit; null on a side without a limit. */
export interface PrintedBand {
  low: string;
  high: string;
  unit: Unit;
  lowBase: number | null;
  highBase: number | null;
}

/** Half of the last digit that a decimal is printed with; 0 for a fraction, which is exact. */
function halfDigit(printed: string): number {
  if (printed.includes('/')) return 0;
  const decimals = /[.,](\d+)/.exec(printed)?.[1]?.length ?? 0;
  return 10 ** -decimals / 2;
}

/**
 * Whether two sources give the same figures. In one unit they have to be equal. In two units one of them
 * was rounded from the other or from a third: then they agree within half of the last digit of the one
 * that is printed finer (0.30 mm and 0.012 in).
 */
export function figuresAgree(one: PrintedBand, other: PrintedBand): boolean {
  return (['low', 'high'] as const).every((side) => {
    const a = one[`${side}Base`];
    const b = other[`${side}Base`];
    if (a === null || b === null) return a === b;
    const rounding =
      one.unit === other.unit
        ? 0
        : Math.min(
            toBase(halfDigit(one[side]), one.unit),
            toBase(halfDigit(other[side]), other.unit),
          );
    return Math.abs(a - b) <= rounding + 1e-9 * Math.max(Math.abs(a), Math.abs(b));
  });
}

/**
 * What other sources print against a revision, the last word of each source: one that was written down
 * again with the specification's own figures contradicts it no more. `noted` is oldest first.
 */
export function openContradictions<C extends PrintedBand & { sourceId: string }>(
  specification: PrintedBand,
  noted: readonly C[],
): C[] {
  const last = new Map(noted.map((each) => [each.sourceId, each]));
  return [...last.values()].filter((each) => !figuresAgree(specification, each));
}
