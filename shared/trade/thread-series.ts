/**
 * Threads by their standard series: ISO 261 (metric, mm) and ASME B1.1 (Unified, threads per inch). From
 * memory, and held against charts that print them (tests/standards/threads.test.ts says which).
 */

export interface MetricSize {
  /** mm */
  readonly diameter: number;
  /** mm; what `M8` means when no pitch is named. */
  readonly coarse: number;
  readonly fine: readonly number[];
}

/** First and second choice, from M3 to M30. */
export const METRIC_SIZES: readonly MetricSize[] = [
  { diameter: 3, coarse: 0.5, fine: [0.35] },
  { diameter: 4, coarse: 0.7, fine: [0.5] },
  { diameter: 5, coarse: 0.8, fine: [0.5] },
  { diameter: 6, coarse: 1, fine: [0.75] },
  { diameter: 7, coarse: 1, fine: [0.75] },
  { diameter: 8, coarse: 1.25, fine: [1, 0.75] },
  { diameter: 10, coarse: 1.5, fine: [1.25, 1, 0.75] },
  { diameter: 12, coarse: 1.75, fine: [1.5, 1.25, 1] },
  { diameter: 14, coarse: 2, fine: [1.5, 1.25, 1] },
  { diameter: 16, coarse: 2, fine: [1.5, 1] },
  { diameter: 18, coarse: 2.5, fine: [2, 1.5, 1] },
  { diameter: 20, coarse: 2.5, fine: [2, 1.5, 1] },
  { diameter: 22, coarse: 2.5, fine: [2, 1.5, 1] },
  { diameter: 24, coarse: 3, fine: [2, 1.5, 1] },
  { diameter: 27, coarse: 3, fine: [2, 1.5, 1] },
  { diameter: 30, coarse: 3.5, fine: [3, 2, 1.5, 1] },
];

export interface UnifiedSize {
  /** As it is written before the hyphen: `10`, `5/16`. */
  readonly name: string;
  /** Nominal, in inches. */
  readonly inches: number;
  /** Threads per inch: UNC and UNF. */
  readonly coarse: number;
  readonly fine: number;
}

/** Numbered sizes are 0.060 in and 0.013 in more for each number. */
const numbered = (number: number, coarse: number, fine: number): UnifiedSize => ({
  name: String(number),
  inches: Number((0.06 + 0.013 * number).toFixed(3)),
  coarse,
  fine,
});

export const UNIFIED_SIZES: readonly UnifiedSize[] = [
  numbered(4, 40, 48),
  numbered(5, 40, 44),
  numbered(6, 32, 40),
  numbered(8, 32, 36),
  numbered(10, 24, 32),
  numbered(12, 24, 28),
  { name: '1/4', inches: 1 / 4, coarse: 20, fine: 28 },
  { name: '5/16', inches: 5 / 16, coarse: 18, fine: 24 },
  { name: '3/8', inches: 3 / 8, coarse: 16, fine: 24 },
  { name: '7/16', inches: 7 / 16, coarse: 14, fine: 20 },
  { name: '1/2', inches: 1 / 2, coarse: 13, fine: 20 },
  { name: '9/16', inches: 9 / 16, coarse: 12, fine: 18 },
  { name: '5/8', inches: 5 / 8, coarse: 11, fine: 18 },
  { name: '3/4', inches: 3 / 4, coarse: 10, fine: 16 },
  { name: '7/8', inches: 7 / 8, coarse: 9, fine: 14 },
  { name: '1', inches: 1, coarse: 8, fine: 12 },
];
