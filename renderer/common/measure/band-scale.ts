import type { SheetBand } from './measure-words.ts';

/** How a band and a reading lie on a line from `from` to `to`, all in one unit. */
export interface BandScale {
  readonly from: number;
  readonly to: number;
  /** On which side the reading lies beyond the line, when it is too far off to be drawn to scale. */
  readonly beyond: 'left' | 'right' | null;
}

/** How many widths of the band the line may reach beyond a limit before a reading is shown as an arrow. */
const REACH = 3;

function widthOf({ low, high }: SheetBand, uncertainty: number): number {
  const width = low !== null && high !== null ? high - low : Math.abs(low ?? high ?? 0) / 2;
  return Math.max(width, uncertainty * 2, Number.MIN_VALUE);
}

/** The line that shows the whole band, room on both sides, and the reading with its uncertainty. */
export function bandScale(band: SheetBand, value: number | null, uncertainty: number): BandScale {
  const width = widthOf(band, uncertainty);
  const low = band.low ?? (band.high ?? 0) - width;
  const high = band.high ?? (band.low ?? 0) + width;
  const margin = width * 0.35;
  const line = { from: low - margin, to: high + margin };
  if (value === null) return { ...line, beyond: null };
  if (value < low - width * REACH) return { ...line, beyond: 'left' };
  if (value > high + width * REACH) return { ...line, beyond: 'right' };
  const pad = uncertainty + width * 0.08;
  return {
    from: Math.min(line.from, value - pad),
    to: Math.max(line.to, value + pad),
    beyond: null,
  };
}
