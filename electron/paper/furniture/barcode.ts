import bwip from 'bwip-js/generic';
import type { Sheet } from './sheet.ts';

/** Modules of white that ISO/IEC 15417 asks for on either side of a Code 128 symbol. */
const QUIET_MODULES = 10;

interface Bar {
  x: number;
  width: number;
}

/**
 * Draws a Code 128 symbol as bars in a box of `width` × `height` points, its quiet zones included.
 * @throws Error when the text cannot be written in Code 128
 */
export function drawBarcode(
  sheet: Sheet,
  text: string,
  box: { x: number; y: number; width: number; height: number },
) {
  const { bars, modules } = barsOf(text);
  const module = box.width / (modules + QUIET_MODULES * 2);
  const start = box.x + QUIET_MODULES * module;
  sheet.structure.text(
    'Figure',
    () => {
      for (const bar of bars) {
        sheet.document.rect(start + bar.x * module, box.y, bar.width * module, box.height);
      }
      sheet.document.fill('#000000');
    },
    `Barcode (Code 128): ${text}`,
  );
}

function barsOf(text: string): { bars: Bar[]; modules: number } {
  const [symbol] = bwip.raw({ bcid: 'code128', text });
  if (symbol === undefined || !('sbs' in symbol)) {
    throw new Error(`'${text}' cannot be written as a Code 128 barcode.`);
  }
  const bars: Bar[] = [];
  let x = 0;
  // Widths in modules: bar, space, bar …
  for (const [index, width] of symbol.sbs.entries()) {
    if (index % 2 === 0) bars.push({ x, width });
    x += width;
  }
  return { bars, modules: x };
}
