import type { TextLine } from '../fonts/typesetter.ts';
import { INK, STYLE } from './ink.ts';
import { type Block, drawLines, heightOf, type Sheet } from './sheet.ts';

const PAD = 8;
const INDENT = 12;
const SIGN = 11;

/** The cautions in a ruled box with a warning sign. A box that no page holds goes on over the next. */
export function cautionBox(sheet: Sheet, cautions: string[], title = 'Cautions'): Block {
  const inner = sheet.width - PAD * 2;
  const heading = sheet.lines(title, STYLE.subheading, inner);
  const items = cautions.map((caution) => sheet.lines(caution, STYLE.text, inner - INDENT));
  const headingHeight = heightOf(heading) + 2;
  const whole = PAD * 2 + headingHeight + items.reduce((sum, lines) => sum + heightOf(lines), 0);
  return {
    height: whole,
    lead: Math.min(whole, sheet.pageRoom),
    draw: (after = 0) => {
      sheet.ensure(Math.min(whole + after, sheet.pageRoom));
      let top = sheet.y;
      const close = () => {
        sheet.y += PAD - 2;
        sheet.structure.artifact(() => {
          sheet.document
            .lineWidth(1)
            .rect(sheet.left, top, sheet.width, sheet.y - top)
            .stroke(INK);
        });
      };
      sheet.y += PAD;
      drawWarningSign(sheet, sheet.left + PAD, sheet.y + 0.6);
      sheet.structure.text('H2', () => {
        drawLines(sheet, heading, sheet.left + PAD + SIGN + 5, sheet.y);
      });
      sheet.y += headingHeight;
      sheet.structure.group('L', () => {
        const goOn = () => {
          close();
          sheet.nextPage();
          top = sheet.y;
          sheet.y += PAD;
        };
        for (const lines of items) {
          if (heightOf(lines) + PAD > sheet.room && heightOf(lines) < sheet.pageRoom) goOn();
          let rest = lines;
          while (heightOf(rest) + PAD > sheet.room) {
            const count = Math.max(1, Math.floor((sheet.room - PAD) / STYLE.text.leading));
            drawItem(sheet, rest.slice(0, count));
            rest = rest.slice(count);
            goOn();
          }
          if (rest.length > 0) drawItem(sheet, rest);
        }
      });
      close();
    },
  };
}

function drawItem(sheet: Sheet, lines: TextLine[]) {
  const x = sheet.left + PAD;
  sheet.structure.group('LI', () => {
    sheet.structure.text('Lbl', () => drawLines(sheet, sheet.lines('–', STYLE.text), x, sheet.y));
    sheet.structure.text('LBody', () => drawLines(sheet, lines, x + INDENT, sheet.y));
  });
  sheet.y += heightOf(lines);
}

/** A triangle with an exclamation mark, drawn: few fonts have it. */
function drawWarningSign(sheet: Sheet, x: number, y: number) {
  const middle = x + SIGN / 2;
  sheet.structure.artifact(() => {
    sheet.document
      .save()
      .lineJoin('round')
      .lineWidth(1.1)
      .polygon([middle, y], [x + SIGN, y + SIGN - 1], [x, y + SIGN - 1])
      .stroke(INK);
    sheet.document.rect(middle - 0.6, y + 3.6, 1.2, 3.2).fill(INK);
    sheet.document.circle(middle, y + 8.2, 0.75).fill(INK);
    sheet.document.restore();
  });
}
