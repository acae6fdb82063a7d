import type { FeatureReadings } from './content.ts';
import { STYLE } from './furniture/ink.ts';
import type { Block, Sheet } from './furniture/sheet.ts';
import { table } from './furniture/table.ts';
import { cell } from './furniture/table-rows.ts';

/** The gauges of a paper, numbered `G1`, `G2` … in the order in which they were first used. */
export function numberedGauges(features: FeatureReadings[]): Map<string, string> {
  const names = features.flatMap(({ readings }) =>
    readings.map(({ gauge }) => gauge).filter((gauge) => gauge.trim() !== ''),
  );
  return new Map([...new Set(names)].map((name, index) => [name, `G${index + 1}`]));
}

const COLUMNS = 3;

/** Which gauge each number stands for. */
export function gaugeLegend(sheet: Sheet, gauges: Map<string, string>): Block[] {
  const entries = [...gauges].map(([name, code]) => cell(`${code}\u00a0\u00a0${name}`, STYLE.soft));
  if (entries.length === 0) return [];
  const perColumn = Math.ceil(entries.length / COLUMNS);
  const rows = Array.from({ length: perColumn }, (_, row) => ({
    open: true,
    // The legend is not divided: whoever looks a gauge up finds all of them in one place.
    keepsNext: true,
    cells: Array.from(
      { length: COLUMNS },
      (__, column) => entries[column * perColumn + row] ?? cell(''),
    ),
  }));
  const columns = Array.from({ length: COLUMNS }, () => ({ heading: '', width: 1 }));
  return [table(sheet, { bare: true, together: true, pad: 0.4, columns, rows })];
}
