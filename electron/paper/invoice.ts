import type { Invoice } from './content.ts';
import { billLines, paymentsAndDue, totalsBlock } from './furniture/bill.ts';
import { fullPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { dashList, paragraph, section } from './furniture/paragraphs.ts';
import { parties } from './furniture/parties.ts';
import { approvals } from './furniture/record.ts';

/** The bill for the work that was done, beside what was approved and what was paid. */
export function drawInvoice(content: Invoice, fingerprint: string): Uint8Array {
  return fullPages(content, fingerprint, (sheet) => [
    parties(sheet),
    section(sheet, 'Work and parts', [
      billLines(sheet, content.lines),
      totalsBlock(sheet, content.totals, paymentsAndDue(sheet, content)),
    ]),
    ...approvals(sheet, content.approvals),
    ...(content.note.trim() === ''
      ? []
      : [section(sheet, 'Note', [paragraph(sheet, content.note)])]),
    ...(content.terms.length > 0
      ? [section(sheet, 'Terms', [dashList(sheet, content.terms, STYLE.cell)])]
      : []),
  ]);
}
