import type { TextStyle } from '../fonts/typesetter.ts';
import { type Block, baselineOf, drawLines, heightOf, type Sheet } from './sheet.ts';

/** Two pieces of text one after the other across a table, each in its own style. */
export function lineBand(
  sheet: Sheet,
  [first, second]: [{ text: string; style: TextStyle }, { text: string; style: TextStyle }],
  { indent = 0, above = 2, below = 0 }: { indent?: number; above?: number; below?: number } = {},
): Block {
  const gap = 8;
  const room = sheet.width - indent;
  const head = sheet.lines(first.text, first.style, room * 0.5);
  const shift = head[0] === undefined ? 0 : Math.max(...head.map(({ width }) => width)) + gap;
  const tail = sheet.lines(second.text, second.style, room - shift);
  const height = above + Math.max(heightOf(head), heightOf(tail)) + below;
  return {
    lead: height,
    height,
    draw: () => {
      const x = sheet.left + indent;
      sheet.structure.group('TR', () => {
        sheet.structure.text('TH', () => drawLines(sheet, head, x, sheet.y + above));
        if (tail.length > 0) {
          const top = sheet.y + above + baselineOf(first.style) - baselineOf(second.style);
          sheet.structure.text('TD', () => drawLines(sheet, tail, x + shift, top));
        }
      });
      sheet.y += height;
    },
  };
}
