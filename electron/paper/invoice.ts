import type { Invoice } from './content.ts';
import { declined, differences } from './furniture/beside-approval.ts';
import { billLines, paymentsAndDue, totalsBlock } from './furniture/bill.ts';
import { fullPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { dashList, paragraph, section } from './furniture/paragraphs.ts';
import { parties } from './furniture/parties.ts';
import { approvals } from './furniture/record.ts';

const HEADINGS = {
  work: 'Work and parts',
  warranty: 'Warranty work, at no charge',
  storage: 'Storage',
} satisfies Record<Invoice['sort'], string>;

/** The bill for the work that was done, beside what was approved and what was paid. */
export function drawInvoice(content: Invoice, fingerprint: string): Uint8Array {
  const { warranty } = content;
  return fullPages(content, fingerprint, (sheet) => [
    parties(sheet),
    ...(warranty === null
      ? []
      : [section(sheet, `Goes back to job ${warranty.job}`, [paragraph(sheet, warranty.reason)])]),
    section(sheet, HEADINGS[content.sort], [
      billLines(sheet, content.lines),
      totalsBlock(sheet, content.totals, paymentsAndDue(sheet, content)),
    ]),
    ...approvals(sheet, content.approvals),
    ...differences(sheet, content),
    ...declined(sheet, content),
    ...(content.note.trim() === ''
      ? []
      : [section(sheet, 'Note', [paragraph(sheet, content.note)])]),
    ...(content.terms.length > 0
      ? [section(sheet, 'Terms', [dashList(sheet, content.terms, STYLE.cell)])]
      : []),
  ]);
}
