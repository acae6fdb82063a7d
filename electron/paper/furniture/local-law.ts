import { STYLE } from './ink.ts';
import { paragraph } from './paragraphs.ts';
import type { Block, Sheet } from './sheet.ts';

/** Said on every paper that agrees something. */
export function localLaw(sheet: Sheet): Block {
  return paragraph(
    sheet,
    'Local law on estimates, storage, liens, tax and signatures comes before anything printed here.',
    STYLE.soft,
  );
}
