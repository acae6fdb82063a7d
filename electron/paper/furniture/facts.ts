import { STYLE } from './ink.ts';
import type { Block, Sheet } from './sheet.ts';
import { table } from './table.ts';
import { cell } from './table-rows.ts';

/** Facts as label and words, one below the other. Facts without words are left out. */
export function facts(sheet: Sheet, pairs: [label: string, words: string][]): Block {
  const told = pairs.filter(([, words]) => words.trim() !== '');
  return table(sheet, {
    bare: true,
    columns: [
      { heading: '', width: 1 },
      { heading: '', width: 3.6 },
    ],
    rows: told.map(([label, words]) => ({
      cells: [cell(label, STYLE.cellStrong), cell(words, STYLE.cell)],
    })),
  });
}
