import type { LabelSort, LabelSymbol } from '../../../shared/contract/parts/index.ts';
import type { TextStyle } from '../fonts/typesetter.ts';
import type { Label } from '../labels.ts';
import { drawBarcode } from './barcode.ts';
import { clippedLines } from './clipped-lines.ts';
import { code128, QUIET_MODULES } from './code-128.ts';
import { INK, MILLIMETRE, SOFT_INK } from './ink.ts';
import { drawQrCode } from './qr-code.ts';
import { drawLines, heightOf, type Sheet } from './sheet.ts';

/** In points. */
export interface LabelBox {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Bars wider than this are no easier to read, mm. */
const WIDEST_MODULE = 0.42;
/** Of a label's height that its bars take; of its width that a QR code takes at most. */
const BARS_SHARE = 0.36;
const QR_SHARE = 0.45;
const GAP = 1.5;

/** Kept free along the edges: what a sheet that is fed askew may cost. */
const paddingOf = ({ width, height }: { width: number; height: number }) =>
  Math.min(2, width * 0.04, height * 0.08);

/** How wide the symbol may be on a label of a size, quiet zones included; all in the unit of the size. */
export function symbolRoom(size: { width: number; height: number }, symbol: LabelSymbol): number {
  const padding = paddingOf(size);
  if (symbol === 'code-128') return size.width - 2 * padding;
  return Math.min(size.height - 2 * padding, size.width * QR_SHARE);
}

const between = (least: number, value: number, most: number) =>
  Math.max(least, Math.min(value, most));

const styleOf = (face: TextStyle['face'], size: number, ink = INK): TextStyle => ({
  face,
  size,
  leading: size * 1.18,
  ink,
});

interface Drawn {
  label: Label;
  sort: LabelSort;
  symbol: LabelSymbol;
}

/**
 * One label in its box: the number to be read from a step away, what it is, and the number as a symbol.
 * A shelf's label says the bin beside the number, and the price; a part's says last where it belongs.
 */
export function drawLabel(sheet: Sheet, box: LabelBox, { label, sort, symbol }: Drawn) {
  const padding =
    paddingOf({ width: box.width / MILLIMETRE, height: box.height / MILLIMETRE }) * MILLIMETRE;
  const inner = {
    x: box.x + padding,
    y: box.y + padding,
    width: box.width - 2 * padding,
    height: box.height - 2 * padding,
  };
  if (symbol === 'qr') {
    const side = Math.min(inner.height, box.width * QR_SHARE);
    drawQrCode(sheet, label.number, { x: inner.x, y: inner.y + (inner.height - side) / 2, side });
    const taken = side + GAP;
    const words = { ...inner, x: inner.x + taken, width: inner.width - taken };
    // The column beside the code is narrow: the bin stands below, and not beside the number.
    drawWords(sheet, words, { label, sort, binBeside: false });
    return;
  }
  const height = inner.height * BARS_SHARE;
  const modules = code128(label.number).modules + QUIET_MODULES * 2;
  const width = Math.min(inner.width, modules * WIDEST_MODULE * MILLIMETRE);
  const y = inner.y + inner.height - height;
  drawBarcode(sheet, label.number, { x: inner.x, y, width, height });
  const words = { ...inner, height: inner.height - height - GAP };
  drawWords(sheet, words, { label, sort, binBeside: sort === 'shelf' });
}

/** The largest that a text may be set on one line of a width. */
function fitted(sheet: Sheet, text: string, largest: number, width: number): TextStyle {
  for (let size = largest; size > 5; size -= 0.5) {
    const style = styleOf('strong', size);
    if (sheet.type.widthOf(text, style) <= width) return style;
  }
  return styleOf('strong', 5);
}

interface Words extends Pick<Drawn, 'label' | 'sort'> {
  binBeside: boolean;
}

function drawWords(sheet: Sheet, box: LabelBox, words: Words) {
  const { number, description, bin } = words.label;
  const text = between(5, Math.min(box.height * 0.15, box.width * 0.08), 12);
  const below = drawHeading(sheet, box, { number, beside: words.binBeside ? bin : '' });
  const foot = footOf(sheet, words, { size: text, width: box.width });
  const body = styleOf('regular', text);
  const left = box.y + box.height - below - (foot.text === '' ? 0 : foot.style.leading);
  const count = Math.min(3, Math.floor(left / body.leading));
  const lines =
    count > 0 ? clippedLines(sheet, description, body, { count, width: box.width }) : [];
  if (lines.length > 0) sheet.structure.text('P', () => drawLines(sheet, lines, box.x, below));
  if (foot.text === '' || left < 0) return;
  const last = clippedLines(sheet, foot.text, foot.style, { count: 1, width: box.width });
  sheet.structure.text('P', () => drawLines(sheet, last, box.x, below + heightOf(lines)));
}

/** What stands last: where a part belongs, and on the shelf what it sells for. */
function footOf(
  sheet: Sheet,
  { label: { bin, price }, sort, binBeside }: Words,
  { size, width }: { size: number; width: number },
) {
  if (sort === 'part')
    return { text: bin === '' ? '' : `Bin ${bin}`, style: styleOf('regular', size, SOFT_INK) };
  const text = [price, binBeside ? '' : bin].filter((each) => each !== '').join(' · ');
  return { text, style: fitted(sheet, text, size * 1.15, width) };
}

/** The number as large as its line takes it, the bin at the end of that line; gives the y below them. */
function drawHeading(
  sheet: Sheet,
  box: LabelBox,
  { number, beside }: { number: string; beside: string },
): number {
  const besideStyle = styleOf('strong', between(6, box.height * 0.22, 16));
  // Letters at the end of a line of their own width would be cut by the last fraction of a point.
  const besideWidth =
    beside === '' ? 0 : Math.min(box.width * 0.4, sheet.type.widthOf(beside, besideStyle) + 1);
  const room = box.width - (beside === '' ? 0 : besideWidth + 2 * GAP);
  const large = fitted(sheet, number, between(7, box.height * 0.3, 28), room);
  const heading = clippedLines(sheet, number, large, { count: 1, width: room });
  sheet.structure.text('P', () => drawLines(sheet, heading, box.x, box.y));
  if (beside === '') return box.y + large.leading;
  const lines = clippedLines(sheet, beside, besideStyle, { count: 1, width: besideWidth });
  const y = box.y + Math.max(0, large.leading - besideStyle.leading);
  sheet.structure.text('P', () => drawLines(sheet, lines, box.x + box.width, y, 'right'));
  return box.y + Math.max(large.leading, besideStyle.leading);
}
