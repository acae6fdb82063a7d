import type { PaperContent } from '../content.ts';
import { paperTitle } from '../naming.ts';
import { MILLIMETRE } from './ink.ts';
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
  const sheet = new Sheet({
    head: content,
    title: paperTitle(content),
    size: SIZES[content.shop.paperSize],
    margins: { top: 36, bottom: 42, left: 46, right: 46 },
  });
  continuationHead(sheet);
  shopHeading(sheet, content.kind);
  sheet.y += 8;
  sheet.flow(blocks(sheet), 8.5);
  pageFooters(sheet, fingerprint);
  return sheet.finish();
}
