import type { PaperContent, PaperHead } from '../content.ts';
import { paperKindWords, paperTitle } from '../naming.ts';
import { MILLIMETRE } from './ink.ts';
import { attachRecord } from './record-attached.ts';
import { continuationHead, pageFooters } from './running-heads.ts';
import { type Block, type PageSize, Sheet } from './sheet.ts';
import { shopHeading } from './shop-heading.ts';

/** ISO 216 A4 and ANSI/ASME Y14.1 A (Letter), in points. */
const SIZES = {
  A4: [210 * MILLIMETRE, 297 * MILLIMETRE],
  Letter: [612, 792],
} satisfies Record<string, PageSize>;

/** A paper of whole pages: the shop's heading, blocks, and at the foot of each page what it is. */
export function fullPages(
  content: PaperContent,
  fingerprint: string,
  blocks: (sheet: Sheet) => Block[],
): Uint8Array {
  const headed = {
    head: content,
    title: paperTitle(content),
    words: paperKindWords(content.kind),
  };
  return headedPages(headed, fingerprint, (sheet) => {
    attachRecord(sheet, content);
    return blocks(sheet);
  });
}

interface Headed {
  head: PaperHead;
  title: string;
  /** What stands largest at the top. */
  words: string;
  /** On the long side, for wide tables. */
  landscape?: boolean;
}

/** @param fingerprint null for pages that are drawn up anew each time and not kept */
export function headedPages(
  { head, title, words, landscape = false }: Headed,
  fingerprint: string | null,
  blocks: (sheet: Sheet) => Block[],
): Uint8Array {
  const [width, height] = SIZES[head.shop.paperSize];
  const sheet = new Sheet({
    head,
    title,
    size: landscape ? [height, width] : [width, height],
    margins: { top: 36, bottom: 42, left: 46, right: 46 },
  });
  continuationHead(sheet);
  shopHeading(sheet, words);
  sheet.y += 8;
  sheet.flow(blocks(sheet), 8.5);
  pageFooters(sheet, fingerprint);
  return sheet.finish();
}
