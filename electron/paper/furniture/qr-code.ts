import bwip from 'bwip-js/generic';
import type { Sheet } from './sheet.ts';

/** Modules of white that ISO/IEC 18004 asks for around a QR code. */
const QUIET_MODULES = 4;

/** Modules on a side and, row by row, which of them are dark. */
interface QrSymbol {
  side: number;
  dark: readonly boolean[];
}

/** @throws Error when the text is too long for a QR code */
function qrCode(text: string): QrSymbol {
  const [symbol] = bwip.raw({ bcid: 'qrcode', text });
  if (symbol === undefined || !('pixs' in symbol))
    throw new Error(`'${text}' cannot be written as a QR code.`);
  return { side: symbol.pixx, dark: Array.from(symbol.pixs, (pixel) => pixel === 1) };
}

/** How many modules a text's QR code is wide, its quiet zone included. */
export const qrModules = (text: string): number => qrCode(text).side + QUIET_MODULES * 2;

/** Draws a QR code in a square of `side` points, its quiet zone included. */
export function drawQrCode(
  sheet: Sheet,
  text: string,
  { x, y, side }: { x: number; y: number; side: number },
) {
  const code = qrCode(text);
  const module = side / (code.side + QUIET_MODULES * 2);
  sheet.structure.text(
    'Figure',
    () => {
      for (const { row, column, length } of runsOf(code))
        sheet.document.rect(
          x + (QUIET_MODULES + column) * module,
          y + (QUIET_MODULES + row) * module,
          length * module,
          module,
        );
      sheet.document.fill('#000000');
    },
    `QR code: ${text}`,
  );
}

/** Dark neighbours of a row as one bar, so that no white hairline parts them. */
function runsOf({ side, dark }: QrSymbol) {
  const runs: { row: number; column: number; length: number }[] = [];
  dark.forEach((isDark, index) => {
    if (!isDark) return;
    const row = Math.floor(index / side);
    const column = index % side;
    const last = runs.at(-1);
    if (last?.row === row && last.column + last.length === column) last.length += 1;
    else runs.push({ row, column, length: 1 });
  });
  return runs;
}
