import type { TextLine, TextStyle } from '../fonts/typesetter.ts';
import { STYLE } from './ink.ts';
import { type Block, drawLines, heightOf, heightOfFlow, leadOf, type Sheet } from './sheet.ts';

/** Text over the whole width. Its first two lines stay together, and so do its last two. */
export function paragraph(sheet: Sheet, text: string, style: TextStyle = STYLE.text): Block {
  return linesBlock(sheet, sheet.lines(text, style), sheet.left, 'P');
}

/** A heading that never stands alone at the foot of a page: what follows it begins below it. */
export function section(
  sheet: Sheet,
  heading: string,
  blocks: Block[],
  {
    gap = 5,
    style = STYLE.heading,
    level = 'H2',
    together = false,
    aside = '',
  }: SectionOptions = {},
): Block {
  const beside = sheet.lines(aside, STYLE.soft, sheet.width * 0.5);
  const lines = sheet.lines(heading, style, sheet.width - (beside[0]?.width ?? 0));
  const below = 2;
  const head = heightOf(lines) + below;
  const height = head + heightOfFlow(blocks, gap);
  const lead = head + leadOf(blocks, gap);
  return {
    height,
    lead: together ? Math.max(lead, Math.min(height, sheet.pageRoom)) : lead,
    draw: (after = 0) => {
      sheet.structure.text(level, () => drawLines(sheet, lines, sheet.left, sheet.y));
      if (beside.length > 0) {
        const top = sheet.y + heightOf(lines) - heightOf(beside);
        sheet.structure.text('P', () => {
          drawLines(sheet, beside, sheet.left + sheet.width, top, 'right');
        });
      }
      sheet.y += head;
      sheet.flow(blocks, gap, after);
    },
  };
}

interface SectionOptions {
  gap?: number;
  style?: TextStyle;
  level?: 'H2' | 'H3';
  /** On one page if a page can hold it. */
  together?: boolean;
  /** Said at the right, level with the heading. */
  aside?: string;
}

const ITEM_GAP = 1.5;

/** A list with a short dash before each item. */
export function dashList(sheet: Sheet, items: string[], style: TextStyle = STYLE.text): Block {
  const indent = 11;
  const laid = items.map((item) => sheet.lines(item, style, sheet.width - indent));
  const blocks = laid.map((lines) => {
    const block = linesBlock(sheet, lines, sheet.left + indent, 'LBody');
    const dash = sheet.lines('–', style);
    return {
      lead: block.lead,
      height: block.height,
      draw: () =>
        sheet.structure.group('LI', () => {
          sheet.structure.text('Lbl', () => drawLines(sheet, dash, sheet.left, sheet.y));
          block.draw();
        }),
    } satisfies Block;
  });
  return {
    lead: blocks[0]?.lead ?? 0,
    height: heightOfFlow(blocks, ITEM_GAP),
    draw: () => sheet.structure.group('L', () => sheet.flow(blocks, ITEM_GAP)),
  };
}

function linesBlock(sheet: Sheet, lines: TextLine[], x: number, type: string): Block {
  return {
    height: heightOf(lines),
    // Three lines cannot be parted without leaving one alone.
    lead: heightOf(lines.slice(0, lines.length <= 3 ? 3 : 2)),
    draw: () => {
      let rest = lines;
      while (rest.length > 0) {
        const count = countThatFits(rest, sheet.room);
        const part = rest.slice(0, count);
        sheet.structure.text(type, () => drawLines(sheet, part, x, sheet.y));
        sheet.y += heightOf(part);
        rest = rest.slice(count);
        if (rest.length > 0) sheet.nextPage();
      }
    },
  };
}

function countThatFits(lines: TextLine[], room: number): number {
  let count = 0;
  let height = 0;
  for (const line of lines) {
    height += line.style.leading;
    if (height > room) break;
    count += 1;
  }
  // No single last line on the next page.
  if (lines.length - count === 1 && count > 2) count -= 1;
  return Math.max(1, count);
}
