import { drawClaimTicket } from './claim-ticket.ts';
import { drawClearanceSheet } from './clearance-sheet.ts';
import type { PaperContent } from './content.ts';
import { drawCreditNote } from './credit-note.ts';
import { drawEstimate } from './estimate.ts';
import { drawInvoice } from './invoice.ts';
import { drawPurchaseOrder } from './purchase-order.ts';
import { drawReceipt } from './receipt.ts';
import { drawStatement } from './statement.ts';
import { drawTag } from './tag.ts';
import { drawWorkOrder } from './work-order.ts';

export { canonicalJson, fingerprintOf } from './fingerprint.ts';
export { drawLabels, unreadableNumbers } from './labels.ts';
export { paperFileName, paperTitle } from './naming.ts';
export { drawReport } from './report.ts';

/**
 * Draws a paper as PDF. Synchronous, so that it can run inside the transaction that issues the paper, and
 * deterministic: the same content and fingerprint give the same bytes on any machine with the same
 * versions of fonts and libraries, whatever its clock, time zone and language.
 * @param fingerprint of the content, from {@link fingerprintOf}; it is printed at the foot of each page
 * @throws RangeError for a locale, time zone, currency, date or amount that cannot be written
 */
export function drawPaper(content: PaperContent, fingerprint: string): Uint8Array {
  switch (content.kind) {
    case 'claim-ticket':
      return drawClaimTicket(content, fingerprint);
    case 'tag':
      return drawTag(content, fingerprint);
    case 'estimate':
      return drawEstimate(content, fingerprint);
    case 'invoice':
      return drawInvoice(content, fingerprint);
    case 'credit-note':
      return drawCreditNote(content, fingerprint);
    case 'receipt':
      return drawReceipt(content, fingerprint);
    case 'work-order':
      return drawWorkOrder(content, fingerprint);
    case 'clearance-sheet':
      return drawClearanceSheet(content, fingerprint);
    case 'statement':
      return drawStatement(content, fingerprint);
    case 'purchase-order':
      return drawPurchaseOrder(content, fingerprint);
  }
}
