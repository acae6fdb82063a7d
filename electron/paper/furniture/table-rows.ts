import type { TextLine, TextStyle } from '../fonts/typesetter.ts';
import { RULE, STYLE } from './ink.ts';
import { type Block, baselineOf, drawLines, heightOf, type Sheet } from './sheet.ts';
import { drawSign, SIGN_SPACE, type Sign } from './signs.ts';
import { GUTTER, type Place } from './table-columns.ts';

/** What stands in a cell: paragraphs below each other, with a sign before the first if need be. */
export interface Cell {
  paragraphs: { text: string; style: TextStyle }[];
  sign?: Sign;
  /** Points it is moved to the right. */
  indent?: number;
}

export interface Row {
  cells: Cell[];
  /** A remark across the whole row, below its cells. */
  remark?: string;
  /** The remark follows the first cell's words where the line has room for it. */
  remarkBeside?: boolean;
  /**
   * Whether the row must not be the last on a page. Left out: the first and the last but one must not,
   * so that no row of a table stands alone.
   */
  keepsNext?: boolean;
  /** Set when no rule is drawn below it. */
  open?: boolean;
  /** Said again when the row is the first on a further page. */
  resume?: Block[];
}

export function cell(text: string, style: TextStyle = STYLE.cell): Cell {
  return { paragraphs: [{ text, style }] };
}

/** A row whose text is broken into lines. */
export interface LaidRow {
  cells: { lines: TextLine[]; sign: Sign | undefined; indent: number }[];
  remark: TextLine[];
  /** Points from the first cell's edge to a remark on its line; null when it stands below. */
  beside: number | null;
  open: boolean;
  /** Points above and below its text. */
  pad: number;
}

export function layOutRow(
  sheet: Sheet,
  row: Row,
  places: Place[],
  width: number,
  pad: number,
): LaidRow {
  const cells = row.cells.map(({ paragraphs, sign, indent = 0 }, index) => {
    const shift = indent + (sign === undefined ? 0 : SIGN_SPACE);
    const room = (places[index]?.width ?? 0) - shift;
    return {
      sign,
      indent,
      lines: paragraphs.flatMap(({ text, style }) => sheet.lines(text, style, room)),
    };
  });
  const remark = sheet.lines(
    row.remark ?? '',
    STYLE.remark,
    width - remarkIndent(row.cells[0]?.indent),
  );
  const beside = row.remarkBeside === true ? roomBeside(cells[0], remark, places[0]) : null;
  return { cells, remark, beside, open: row.open ?? false, pad };
}

/** Where a remark of one line goes on behind a first cell of one line; null when it has no room there. */
function roomBeside(
  first: LaidRow['cells'][number] | undefined,
  remark: TextLine[],
  place: Place | undefined,
): number | null {
  const [words] = first?.lines ?? [];
  const [said] = remark;
  if (first?.lines.length !== 1 || remark.length !== 1 || !words || !said || !place) return null;
  const x = first.indent + words.width + GUTTER;
  return x + said.width <= place.width ? x : null;
}

function remarkIndent(indent = 0): number {
  return indent + GUTTER;
}

export function tallest(cells: TextLine[][]): number {
  return Math.max(0, ...cells.map(heightOf));
}

export function rowHeight({ cells, remark, beside, pad }: LaidRow): number {
  const below = beside === null ? heightOf(remark) : 0;
  return tallest(cells.map(({ lines }) => lines)) + below + pad * 2;
}

export function drawRow(sheet: Sheet, row: LaidRow, places: Place[], x: number, width: number) {
  const top = sheet.y + row.pad;
  sheet.structure.group('TR', () => {
    for (const [index, { lines, sign, indent }] of row.cells.entries()) {
      const place = places[index];
      const [first] = lines;
      if (sign !== undefined && place !== undefined && first !== undefined) {
        drawSign(sheet, sign, place.x + indent, top + baselineOf(first.style));
      }
      const shift = indent + (sign === undefined ? 0 : SIGN_SPACE);
      drawCell(sheet, 'TD', lines, place && { ...place, x: place.x + shift }, top);
    }
    if (row.remark.length > 0) {
      sheet.structure.text('TD', () => drawRemark(sheet, row, x, top));
    }
  });
  sheet.y += rowHeight(row);
  if (!row.open) sheet.rule(0.35, RULE, x, width);
}

function drawRemark(sheet: Sheet, { cells, remark, beside }: LaidRow, x: number, top: number) {
  if (beside === null) {
    const below = top + tallest(cells.map(({ lines }) => lines));
    drawLines(sheet, remark, x + remarkIndent(cells[0]?.indent), below);
    return;
  }
  const line = cells[0]?.lines[0]?.style ?? STYLE.cell;
  drawLines(sheet, remark, x + beside, top + baselineOf(line) - baselineOf(STYLE.remark));
}

export function drawCell(
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

/** Cuts a row so that its first part is no taller than `room`, yet has one line of each cell at least. */
export function divideRow(row: LaidRow, room: number): [LaidRow, LaidRow] {
  const { pad, open } = row;
  const cells = row.cells.map(({ lines, sign, indent }) => {
    let count = 0;
    let height = pad * 2;
    for (const line of lines) {
      height += line.style.leading;
      if (height > room && count > 0) break;
      count += 1;
    }
    return { sign, indent, head: lines.slice(0, count), tail: lines.slice(count) };
  });
  // Once the cells are through, it is the remark that is too long.
  const remarkOnly = cells.every(({ tail }) => tail.length === 0);
  const used = remarkOnly ? tallest(cells.map(({ head }) => head)) + pad * 2 : room;
  const leading = STYLE.remark.leading;
  const remarkCount = remarkOnly ? Math.max(0, Math.floor((room - used) / leading)) : 0;
  return [
    {
      cells: cells.map(({ head, sign, indent }) => ({ lines: head, sign, indent })),
      remark: row.remark.slice(0, remarkCount),
      beside: null,
      pad,
      open,
    },
    {
      cells: cells.map(({ tail, indent }) => ({ lines: tail, sign: undefined, indent })),
      remark: row.remark.slice(remarkCount),
      beside: null,
      pad,
      open,
    },
  ];
}
