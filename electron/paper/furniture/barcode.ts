import { code128, QUIET_MODULES } from './code-128.ts';
import type { Sheet } from './sheet.ts';

/**
 * Draws a Code 128 symbol as bars in a box of `width` × `height` points, its quiet zones included.
 * @throws Error when the text cannot be written in Code 128
 */
export function drawBarcode(
  sheet: Sheet,
  text: string,
  box: { x: number; y: number; width: number; height: number },
) {
  const { widths, modules } = code128(text);
  const module = box.width / (modules + QUIET_MODULES * 2);
  sheet.structure.text(
    'Figure',
    () => {
      let x = box.x + QUIET_MODULES * module;
      for (const [index, width] of widths.entries()) {
        if (index % 2 === 0) sheet.document.rect(x, box.y, width * module, box.height);
        x += width * module;
      }
      sheet.document.fill('#000000');
    },
    `Barcode (Code 128): ${text}`,
  );
}
