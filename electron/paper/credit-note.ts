import type { CreditNote } from './content.ts';
import { billLines, totalsBlock } from './furniture/bill.ts';
import { fullPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { dashList, paragraph, section } from './furniture/paragraphs.ts';
import { parties } from './furniture/parties.ts';

/** What is taken off an issued invoice, why, and what becomes of the money. */
export function drawCreditNote(content: CreditNote, fingerprint: string): Uint8Array {
  const { lines, totals, offOpen, freed, reason, terms } = content;
  return fullPages(content, fingerprint, (sheet) => [
    parties(sheet),
    section(sheet, 'Reason', [paragraph(sheet, reason)]),
    section(sheet, 'Taken off the invoice', [
      billLines(sheet, lines),
      totalsBlock(sheet, totals, [
        ...(offOpen === 0 ? [] : [{ label: 'Off what was still to be paid', amount: offOpen }]),
        ...(freed === 0
          ? []
          : [{ label: 'Paid before, and yours again', amount: freed, large: true }]),
      ]),
    ]),
    ...(freed === 0
      ? []
      : [
          dashList(
            sheet,
            ['What is yours again is given back, or set against another bill: as you wish.'],
            STYLE.cell,
          ),
        ]),
    ...(terms.length > 0 ? [section(sheet, 'Terms', [dashList(sheet, terms, STYLE.cell)])] : []),
  ]);
}
