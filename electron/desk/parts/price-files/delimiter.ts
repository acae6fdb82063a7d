import { DELIMITERS, type Delimiter } from '../../../../shared/work/parts/price-file/words.ts';
import { csvRecords } from './csv-records.ts';

/** So many records tell how a file is divided, of so many characters. */
const LOOKED_AT = 200;
const LOOKED_AT_LENGTH = 200_000;

/** The mark that divides most records into the same number of columns, and into most columns. */
export function delimiterOf(text: string): Delimiter {
  const scored = DELIMITERS.map((delimiter) => ({
    delimiter,
    score: scoreOf(text.slice(0, LOOKED_AT_LENGTH), delimiter),
  }));
  return scored.reduce((best, each) => (each.score > best.score ? each : best)).delimiter;
}

function scoreOf(text: string, delimiter: Delimiter): number {
  const [looked] = csvRecords(text, delimiter, LOOKED_AT).take(1).toArray();
  const widths = (looked?.records ?? []).map(({ cells }) => cells?.length ?? 1);
  const usual = usualWidth(widths);
  const alike = widths.filter((width) => width === usual).length;
  // One column is no division at all.
  return usual < 2 ? 0 : (alike / widths.length) * (1 + Math.log(usual));
}

/** How many columns most records have; zero for none. */
export function usualWidth(widths: readonly number[]): number {
  const times = new Map<number, number>();
  for (const width of widths) times.set(width, (times.get(width) ?? 0) + 1);
  return [...times].reduce((best, each) => (each[1] > best[1] ? each : best), [0, 0] as const)[0];
}
