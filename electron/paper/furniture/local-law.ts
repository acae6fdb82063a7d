import { STYLE } from './ink.ts';
import { paragraph } from './paragraphs.ts';
import type { Block, Sheet } from './sheet.ts';

/** Said on every paper that agrees something. */
export const LOCAL_LAW =
  'Local law on estimates, storage, liens, tax and signatures comes before anything printed here.';

export function localLaw(sheet: Sheet): Block {
  return paragraph(sheet, LOCAL_LAW, STYLE.soft);
}
