import type { Tag } from './content.ts';
import type { TextStyle } from './fonts/typesetter.ts';
import { drawBarcode } from './furniture/barcode.ts';
import { clippedLines } from './furniture/clipped-lines.ts';
import { INK, MILLIMETRE, RULE, SOFT_INK, STYLE } from './furniture/ink.ts';
import { attachRecord } from './furniture/record-attached.ts';
import { drawLines, heightOf, Sheet } from './furniture/sheet.ts';
import { paperTitle } from './naming.ts';

const SIZE: [number, number] = [100 * MILLIMETRE, 62 * MILLIMETRE];
const MARGIN = 4 * MILLIMETRE;
/** Kept free on the left for the wire. */
const WIRE_STRIP = 12 * MILLIMETRE;
const FOOT = 3.4 * MILLIMETRE;

const CODE = { face: 'strong', size: 31, leading: 34, ink: INK } satisfies TextStyle;
const NAME = { face: 'strong', size: 12.5, leading: 15, ink: INK } satisfies TextStyle;
const PRINT = { face: 'regular', size: 4.4, leading: 5.6, ink: SOFT_INK } satisfies TextStyle;

/**
 * The tag that is wired to the machine: the job's code to be read from two steps away and by a reader,
 * whose it is, when it was promised, what came with it. One small page; what has no room on it is counted
 * and stands in full on the claim ticket.
 */
export function drawTag(content: Tag, fingerprint: string): Uint8Array {
  const sheet = new Sheet({
    head: content,
    title: paperTitle(content),
    size: SIZE,
    margins: {
      top: 3 * MILLIMETRE,
      bottom: FOOT + 2 * MILLIMETRE,
      left: WIRE_STRIP,
      right: MARGIN,
    },
  });
  drawWireHole(sheet);
  drawCode(sheet, content);
  drawOwner(sheet, content);
  drawDetails(sheet, content);
  drawFoot(sheet, fingerprint);
  if (content.corrects) drawFormer(sheet, content.corrects.number);
  attachRecord(sheet, content);
  return sheet.finish();
}

function drawWireHole(sheet: Sheet) {
  const x = WIRE_STRIP / 2;
  sheet.structure.artifact(() => {
    sheet.document
      .save()
      .lineWidth(0.6)
      .dash(2, { space: 2 })
      .circle(x, SIZE[1] / 2, 3 * MILLIMETRE)
      .stroke(RULE)
      .restore();
  });
}

function drawCode(sheet: Sheet, content: Tag) {
  const { code, promisedFor } = content.job;
  const lines = sheet.lines(code, CODE);
  const half = sheet.width - (lines[0]?.width ?? 0) - 10;
  const promised = [
    ...sheet.lines('Promised for', STYLE.label, half),
    ...sheet.lines(
      promisedFor === null ? 'no date' : sheet.writing.date(promisedFor),
      STYLE.subheading,
      half,
    ),
  ];
  sheet.structure.text('H1', () => drawLines(sheet, lines, sheet.left, sheet.y - 3));
  sheet.structure.text('P', () =>
    drawLines(sheet, promised, sheet.left + sheet.width, sheet.y + 3, 'right'),
  );
  sheet.y += 34;
  const height = 12.5 * MILLIMETRE;
  drawBarcode(sheet, code, { x: sheet.left - 14, y: sheet.y, width: sheet.width + 20, height });
  sheet.y += height + 4;
}

function drawOwner(sheet: Sheet, content: Tag) {
  const { customer, machine } = content;
  const what = [
    machine.kind,
    machine.make,
    machine.model,
    machine.serial && `serial ${machine.serial}`,
  ];
  for (const lines of [
    clippedLines(sheet, customer.name, NAME, { count: 1 }),
    clippedLines(sheet, what.filter(Boolean).join(' '), STYLE.cell, { count: 1 }),
  ]) {
    sheet.structure.text('P', () => drawLines(sheet, lines, sheet.left, sheet.y));
    sheet.y += heightOf(lines);
  }
  sheet.y += 2;
  sheet.rule(0.5, INK);
  sheet.y += 3;
}

function drawDetails(sheet: Sheet, content: Tag) {
  const details: [TextStyle, string][] = [
    [STYLE.cellStrong, `Left with it: ${content.leftWith.join('; ') || 'nothing else'}`],
    [STYLE.cell, content.cautions.join(' ')],
    [STYLE.cellSoft, content.complaint],
  ];
  if (content.doNotRun !== undefined) details.unshift([NAME, `DO NOT RUN: ${content.doNotRun}`]);
  for (const [index, [style, text]] of details.entries()) {
    if (text.trim() === '') continue;
    // Those that follow are left a line each.
    const kept = (details.length - 1 - index) * STYLE.cellStrong.leading;
    const room = Math.floor((sheet.room - kept) / style.leading);
    const count = Math.max(1, Math.min(2, room));
    const lines = clippedLines(sheet, text, style, { count });
    sheet.structure.text('P', () => drawLines(sheet, lines, sheet.left, sheet.y));
    sheet.y += heightOf(lines) + 1;
  }
}

function drawFoot(sheet: Sheet, fingerprint: string) {
  const y = SIZE[1] - FOOT - 2;
  const print = sheet.lines(`${sheet.title}  ·  SHA-256 ${fingerprint}`, PRINT, SIZE[0]);
  const page = sheet.lines('Page 1 of 1', PRINT);
  sheet.structure.artifact(() => {
    drawLines(sheet, print, sheet.left, y);
    drawLines(sheet, page, sheet.left + sheet.width, y, 'right');
  }, 'Pagination');
}

/** The tag that hung there before, in the corner below the wire: no line of the tag makes room for it. */
function drawFormer(sheet: Sheet, number: string) {
  const left = 2.5 * MILLIMETRE;
  const lines = sheet.lines(`In place of ${number}`, PRINT, WIRE_STRIP - left);
  const y = SIZE[1] - FOOT - 2 + PRINT.leading - heightOf(lines);
  sheet.structure.text('P', () => drawLines(sheet, lines, left, y));
}
