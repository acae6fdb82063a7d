import { typedNameWords } from '../../../shared/work/typed-name.ts';
import type { Signature } from '../content.ts';
import type { TextLine, TextStyle } from '../fonts/typesetter.ts';
import { INK, RULE, STYLE } from './ink.ts';
import { type Block, drawLines, heightOf, type Sheet } from './sheet.ts';

interface Signatory {
  /** `Customer`, `For the shop`. */
  label: string;
  /** Null: a line to sign on by hand. */
  signature: Signature | null;
}

const BOX_HEIGHT = 46;
const GAP = 22;
const PAD = 6;

interface LaidSignatory {
  signatory: Signatory;
  label: TextLine[];
  typed: TextLine[];
  below: TextLine[];
}

/**
 * Signature boxes side by side, never divided. Strokes are drawn as they were written; a typed name stands
 * upright and says who entered it, so that nobody takes it for a signature. Words may stand in
 * the place that a single box leaves free.
 */
export function signatureBoxes(
  sheet: Sheet,
  signatories: Signatory[],
  beside: { text: string; style: TextStyle }[] = [],
): Block {
  const width = Math.min(
    (sheet.width - GAP * (signatories.length - 1)) / signatories.length,
    sheet.width * 0.48,
  );
  const laid = signatories.map((signatory) => layOut(sheet, signatory, width));
  const boxHeight = Math.max(
    BOX_HEIGHT,
    ...laid.map(({ typed }) => heightOf(typed) + (typed.length > 0 ? PAD * 2 : 0)),
  );
  const labelHeight = Math.max(...laid.map(({ label }) => heightOf(label)));
  const belowHeight = Math.max(...laid.map(({ below }) => heightOf(below)));
  const wordsLeft = (width + GAP) * signatories.length;
  const words = beside.flatMap(({ text, style }) =>
    sheet.lines(text, style, sheet.width - wordsLeft),
  );
  const height = Math.max(
    labelHeight + 2 + boxHeight + 3 + belowHeight,
    labelHeight + 2 + heightOf(words),
  );
  return {
    lead: height,
    height,
    draw: () => {
      for (const [index, one] of laid.entries()) {
        const x = sheet.left + index * (width + GAP);
        const top = sheet.y + labelHeight + 2;
        sheet.structure.text('P', () => drawLines(sheet, one.label, x, sheet.y));
        drawBox(sheet, one, { x, y: top, width, height: boxHeight });
        sheet.structure.text('P', () => drawLines(sheet, one.below, x, top + boxHeight + 3));
      }
      if (words.length > 0) {
        const top = sheet.y + labelHeight + 2;
        sheet.structure.text('P', () => drawLines(sheet, words, sheet.left + wordsLeft, top));
      }
      sheet.y += height;
    },
  };
}

function layOut(sheet: Sheet, signatory: Signatory, width: number): LaidSignatory {
  const { label, signature } = signatory;
  const typedBy = signature?.typedBy ?? null;
  return {
    signatory,
    label: sheet.lines(label, STYLE.label, width),
    typed:
      signature === null || typedBy === null
        ? []
        : [
            ...sheet.lines(signature.name, STYLE.typedName, width - PAD * 2),
            ...sheet.lines(typedNameWords(typedBy), STYLE.cellSoft, width - PAD * 2),
          ],
    below:
      signature === null
        ? sheet.lines('Name, date and signature', STYLE.soft, width)
        : [
            ...sheet.lines(signature.name, STYLE.strong, width),
            ...sheet.lines(
              `${typedBy === null ? 'Signed' : 'Recorded'} ${sheet.writing.instant(signature.signedAt)}`,
              STYLE.soft,
              width,
            ),
          ],
  };
}

interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

function drawBox(sheet: Sheet, { signatory, typed }: LaidSignatory, box: Box) {
  const { signature } = signatory;
  sheet.structure.artifact(() => {
    sheet.document.lineWidth(0.6).rect(box.x, box.y, box.width, box.height).stroke(RULE);
  });
  if (typed.length > 0) {
    sheet.structure.text('P', () => drawLines(sheet, typed, box.x + PAD, box.y + PAD));
  } else if (signature !== null) {
    sheet.structure.text(
      'Figure',
      () => drawStrokes(sheet, signature, box),
      `Signature of ${signature.name}`,
    );
  }
}

/** Fits the pad into the box without distorting it. */
function drawStrokes(sheet: Sheet, signature: Signature, box: Box) {
  const scale = Math.min(
    (box.width - PAD * 2) / Math.max(signature.width, 1),
    (box.height - PAD * 2) / Math.max(signature.height, 1),
  );
  const left = box.x + (box.width - signature.width * scale) / 2;
  const top = box.y + (box.height - signature.height * scale) / 2;
  const { document } = sheet;
  document.save();
  // A stroke that ran off the pad must not run over the text.
  document.rect(box.x, box.y, box.width, box.height).clip();
  document.lineWidth(1.1).lineCap('round').lineJoin('round').strokeColor(INK);
  for (const [first, ...rest] of signature.strokes) {
    if (first === undefined) continue;
    document.moveTo(left + first.x * scale, top + first.y * scale);
    // A tap is a stroke of no length, which round caps show as a dot.
    for (const point of rest.length > 0 ? rest : [first]) {
      document.lineTo(left + point.x * scale, top + point.y * scale);
    }
    document.stroke();
  }
  document.restore();
}
