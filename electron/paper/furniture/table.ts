import { INK, STYLE } from './ink.ts';
import { type Block, heightOf, type Sheet } from './sheet.ts';
import { type Column, placesOf } from './table-columns.ts';
import {
  divideRow,
  drawCell,
  drawRow,
  layOutRow,
  type Row,
  rowHeight,
  tallest,
} from './table-rows.ts';

/** Something that stands across all columns: a heading between rows, what follows from those above. */
export interface Band {
  band: Block;
  keepsNext?: boolean;
  resume?: Block[];
}

interface TableOptions {
  columns: Column[];
  rows: (Row | Band)[];
  /** Where it stands; the whole width of the sheet when left out. */
  x?: number;
  width?: number;
  /** Without a row of headings. */
  bare?: boolean;
  /** On one page if a page can hold it. */
  together?: boolean;
  /** Points above and below the text of a row. */
  pad?: number;
}

const PAD = 2.4;

const isRow = (entry: Row | Band): entry is Row => 'cells' in entry;

/**
 * A table whose headings are repeated on each page and whose rows stay whole. Only a row taller than a
 * page is divided, between lines.
 */
export function table(sheet: Sheet, options: TableOptions): Block {
  const { columns, bare = false, together = false, pad = PAD } = options;
  const x = options.x ?? sheet.left;
  const width = options.width ?? sheet.width;
  const places = placesOf(sheet, columns, options.rows.filter(isRow), x, width);
  const headings = columns.map((column, index) =>
    sheet.lines(column.heading, STYLE.label, places[index]?.width),
  );
  const headingHeight = bare ? 0 : tallest(headings) + pad + 3;
  const entries = options.rows.map((entry, index) => {
    const atEdge = isRow(entry) && (index === 0 || index === options.rows.length - 2);
    const row = isRow(entry) ? layOutRow(sheet, entry, places, width, pad) : null;
    return {
      row,
      band: isRow(entry) ? null : entry.band,
      height: row === null ? (isRow(entry) ? 0 : entry.band.height) : rowHeight(row),
      keepsNext: entry.keepsNext ?? atEdge,
      resume: entry.resume ?? [],
    };
  });
  const whole = headingHeight + entries.reduce((sum, { height }) => sum + height, 0);

  /** Points that must be free for an entry: its own, those of what it keeps, and what comes after the table. */
  const need = (index: number, after: number): number => {
    const entry = entries[index];
    if (entry === undefined) return after;
    const last = index === entries.length - 1;
    return entry.height + (last ? after : entry.keepsNext ? need(index + 1, after) : 0);
  };

  const drawHeadings = () => {
    if (bare) return;
    sheet.structure.group('TR', () => {
      for (const [index, lines] of headings.entries()) {
        drawCell(sheet, 'TH', lines, places[index], sheet.y + headingHeight - 3 - heightOf(lines));
      }
    });
    sheet.y += headingHeight;
    sheet.rule(0.9, INK, x, width);
  };

  const lead = Math.min(headingHeight + need(0, 0), sheet.pageRoom);
  return {
    height: whole,
    lead: together ? Math.max(lead, Math.min(whole, sheet.pageRoom)) : lead,
    draw: (after = 0) =>
      sheet.structure.group('Table', () => {
        drawHeadings();
        const pageFull = sheet.pageRoom - headingHeight;
        for (const [index, { row, band, height, resume }] of entries.entries()) {
          const chain = need(index, after);
          const wanted = chain > pageFull ? height : chain;
          // A page that holds nothing but the headings has no more to offer than the next.
          if (index > 0 && wanted > sheet.room && sheet.room < pageFull) {
            sheet.nextPage();
            drawHeadings();
            for (const block of resume) block.draw();
          }
          if (band !== null) band.draw();
          if (row === null) continue;
          let rest = row;
          while (rowHeight(rest) > sheet.room) {
            const [head, tail] = divideRow(rest, sheet.room);
            drawRow(sheet, head, places, x, width);
            sheet.nextPage();
            drawHeadings();
            rest = tail;
          }
          drawRow(sheet, rest, places, x, width);
        }
      }),
  };
}
