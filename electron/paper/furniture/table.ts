import type { TextLine, TextStyle } from '../fonts/typesetter.ts';
import { INK, RULE, STYLE } from './ink.ts';
import { type Block, baselineOf, drawLines, heightOf, type Sheet } from './sheet.ts';
import { drawSign, SIGN_SPACE, type Sign } from './signs.ts';

interface Column {
  heading: string;
  /** Share of the width that the fitted columns leave, or `fit`: as wide as what stands in it. */
  width: number | 'fit';
  align?: 'left' | 'right';
}

/** What stands in a cell: paragraphs below each other, with a sign before the first if need be. */
export interface Cell {
  paragraphs: { text: string; style: TextStyle }[];
  sign?: Sign;
}

export interface Row {
  cells: Cell[];
  /** A remark across the whole row, below its cells. */
  remark?: string;
}

interface TableOptions {
  columns: Column[];
  rows: Row[];
  /** Where it stands; the whole width of the sheet when left out. */
  x?: number;
  width?: number;
  /** Without a row of headings. */
  bare?: boolean;
  /** On one page if a page can hold it. */
  together?: boolean;
}

const PAD = 3;
const GUTTER = 8;
/** No fitted column takes more than this share of the table. */
const FIT_LIMIT = 0.3;

export function cell(text: string, style: TextStyle = STYLE.cell): Cell {
  return { paragraphs: [{ text, style }] };
}

interface LaidRow {
  cells: { lines: TextLine[]; sign: Sign | undefined }[];
  remark: TextLine[];
}

/**
 * A table whose headings are repeated on each page and whose rows stay whole. Only a row taller than a
 * page is divided, between lines.
 */
export function table(sheet: Sheet, options: TableOptions): Block {
  const x = options.x ?? sheet.left;
  const width = options.width ?? sheet.width;
  const places = placesOf(sheet, options, x, width);
  const headings = options.columns.map((column, index) =>
    sheet.lines(column.heading, STYLE.label, places[index]?.width),
  );
  const headingHeight = options.bare ? 0 : tallest(headings) + PAD * 2;
  const rows = options.rows.map((row) => layOut(sheet, row, places, width));
  const heights = rows.map(rowHeight);
  const whole = headingHeight + heights.reduce((sum, height) => sum + height, 0);
  const lead = headingHeight + (heights[0] ?? 0);

  const drawHeadings = () => {
    if (options.bare) return;
    sheet.structure.group('TR', () => {
      for (const [index, lines] of headings.entries()) {
        drawCell(
          sheet,
          'TH',
          lines,
          places[index],
          sheet.y + headingHeight - PAD - heightOf(lines),
        );
      }
    });
    sheet.y += headingHeight;
    sheet.rule(0.9, INK, x, width);
  };
  const drawRow = (row: LaidRow) => {
    const top = sheet.y + PAD;
    sheet.structure.group('TR', () => {
      for (const [index, { lines, sign }] of row.cells.entries()) {
        const place = places[index];
        const [first] = lines;
        if (sign !== undefined && place !== undefined && first !== undefined) {
          drawSign(sheet, sign, place.x, top + baselineOf(first.style));
        }
        const shifted = sign && place ? { ...place, x: place.x + SIGN_SPACE } : place;
        drawCell(sheet, 'TD', lines, shifted, top);
      }
      if (row.remark.length > 0) {
        const below = top + tallest(row.cells.map(({ lines }) => lines));
        sheet.structure.text('TD', () => drawLines(sheet, row.remark, x + GUTTER, below));
      }
    });
    sheet.y += rowHeight(row);
    sheet.rule(0.35, RULE, x, width);
  };

  return {
    height: whole,
    lead: options.together ? Math.max(lead, Math.min(whole, sheet.pageRoom)) : lead,
    draw: () =>
      sheet.structure.group('Table', () => {
        drawHeadings();
        for (const [index, row] of rows.entries()) {
          const height = heights[index] ?? 0;
          if (height > sheet.room && sheet.room < sheet.pageRoom - headingHeight) {
            sheet.nextPage();
            drawHeadings();
          }
          let rest = row;
          while (rowHeight(rest) > sheet.room) {
            const [head, tail] = divide(rest, sheet.room);
            drawRow(head);
            sheet.nextPage();
            drawHeadings();
            rest = tail;
          }
          drawRow(rest);
        }
      }),
  };
}

interface Place {
  x: number;
  width: number;
  align: 'left' | 'right';
}

function placesOf(sheet: Sheet, options: TableOptions, x: number, width: number): Place[] {
  const fitted = options.columns.map((column, index) => {
    if (column.width !== 'fit') return null;
    const widest = options.rows.reduce(
      (most, row) => {
        const paragraphs = row.cells[index]?.paragraphs ?? [];
        const own = Math.max(
          0,
          ...paragraphs.map(({ text, style }) => sheet.type.widthOf(text, style)),
        );
        return Math.max(most, own);
      },
      sheet.type.widthOf(column.heading, STYLE.label),
    );
    return Math.min(widest + 0.5, width * FIT_LIMIT);
  });
  const taken = fitted.reduce<number>((sum, own) => sum + (own ?? 0), 0);
  const free = width - taken - GUTTER * (options.columns.length - 1);
  const shares = options.columns.reduce(
    (sum, column) => sum + (column.width === 'fit' ? 0 : column.width),
    0,
  );
  let at = x;
  return options.columns.map((column, index) => {
    const own = column.width === 'fit' ? (fitted[index] ?? 0) : (free * column.width) / shares;
    const place = { x: at, width: own, align: column.align ?? 'left' } satisfies Place;
    at += own + GUTTER;
    return place;
  });
}

function layOut(sheet: Sheet, row: Row, places: Place[], width: number): LaidRow {
  return {
    cells: row.cells.map(({ paragraphs, sign }, index) => {
      const room = (places[index]?.width ?? 0) - (sign === undefined ? 0 : SIGN_SPACE);
      return {
        sign,
        lines: paragraphs.flatMap(({ text, style }) => sheet.lines(text, style, room)),
      };
    }),
    remark: sheet.lines(row.remark ?? '', STYLE.remark, width - GUTTER * 2),
  };
}

function tallest(cells: TextLine[][]): number {
  return Math.max(0, ...cells.map(heightOf));
}

function rowHeight(row: LaidRow): number {
  return tallest(row.cells.map(({ lines }) => lines)) + heightOf(row.remark) + PAD * 2;
}

/** Cuts a row so that its first part is no taller than `room`, yet has one line of each cell at least. */
function divide(row: LaidRow, room: number): [LaidRow, LaidRow] {
  const cells = row.cells.map(({ lines, sign }) => {
    let count = 0;
    let height = PAD * 2;
    for (const line of lines) {
      height += line.style.leading;
      if (height > room && count > 0) break;
      count += 1;
    }
    return { sign, head: lines.slice(0, count), tail: lines.slice(count) };
  });
  // Once the cells are through, it is the remark that is too long.
  const remarkOnly = cells.every(({ tail }) => tail.length === 0);
  const used = remarkOnly ? tallest(cells.map(({ head }) => head)) + PAD * 2 : room;
  const leading = STYLE.remark.leading;
  const remarkCount = remarkOnly ? Math.max(0, Math.floor((room - used) / leading)) : 0;
  return [
    {
      cells: cells.map(({ head, sign }) => ({ lines: head, sign })),
      remark: row.remark.slice(0, remarkCount),
    },
    {
      cells: cells.map(({ tail }) => ({ lines: tail, sign: undefined })),
      remark: row.remark.slice(remarkCount),
    },
  ];
}

function drawCell(
  sheet: Sheet,
  type: 'TH' | 'TD',
  lines: TextLine[],
  place: Place | undefined,
  top: number,
) {
  if (place === undefined) return;
  const x = place.align === 'right' ? place.x + place.width : place.x;
  sheet.structure.text(type, () => drawLines(sheet, lines, x, top, place.align));
}
