import bwip from 'bwip-js/generic';

/** Modules of white that ISO/IEC 15417 asks for on either side of a Code 128 symbol. */
export const QUIET_MODULES = 10;

/** A symbol as widths in modules: bar, space, bar … */
export interface BarSymbol {
  widths: readonly number[];
  /** All of them together, without the quiet zones. */
  modules: number;
}

/**
 * The bars of a text in Code 128 (ISO/IEC 15417).
 * @throws Error when the text cannot be written in Code 128
 */
export function code128(text: string): BarSymbol {
  const [symbol] = bwip.raw({ bcid: 'code128', text });
  if (symbol === undefined || !('sbs' in symbol)) {
    throw new Error(`'${text}' cannot be written as a Code 128 barcode.`);
  }
  const widths = [...symbol.sbs];
  return { widths, modules: widths.reduce((sum, width) => sum + width, 0) };
}
