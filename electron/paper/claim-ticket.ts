import type { ClaimTicket } from './content.ts';
import { cautionBox } from './furniture/cautions.ts';
import { facts } from './furniture/facts.ts';
import { fullPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { dashList, section } from './furniture/paragraphs.ts';
import { parties } from './furniture/parties.ts';
import { signatureBoxes } from './furniture/signatures.ts';
import { table } from './furniture/table.ts';
import { cell } from './furniture/table-rows.ts';
import { takenIn } from './furniture/taken-in.ts';

/** What the customer takes away at intake: what was left, what was said and what was agreed. */
export function drawClaimTicket(content: ClaimTicket, fingerprint: string): Uint8Array {
  return fullPages(content, fingerprint, (sheet) => {
    const { money, date } = sheet.writing;
    const agreed = (amount: number | null) => (amount === null ? 'none agreed' : money(amount));
    const { promisedFor } = content.job;
    return [
      parties(sheet),
      takenIn(sheet, content),
      section(sheet, 'What was agreed', [
        table(sheet, {
          columns: [
            { heading: 'Promised for', width: 1.2 },
            { heading: 'Diagnosis fee', width: 1 },
            { heading: 'Spending limit without a further call', width: 1.5 },
            { heading: 'Deposit', width: 1 },
          ],
          rows: [
            {
              cells: [
                cell(promisedFor === null ? 'no date' : date(promisedFor), STYLE.subheading),
                cell(agreed(content.diagnosisFee), STYLE.subheading),
                cell(agreed(content.spendingLimit), STYLE.subheading),
                cell(agreed(content.deposit), STYLE.subheading),
              ],
            },
          ],
        }),
        facts(sheet, [['Reach the customer by', content.reachBy]]),
      ]),
      ...(content.terms.length > 0
        ? [section(sheet, 'Terms', [dashList(sheet, content.terms, STYLE.cell)])]
        : []),
      ...(content.cautions.length > 0 ? [cautionBox(sheet, content.cautions)] : []),
      signatureBoxes(
        sheet,
        [{ label: 'Customer', signature: content.signature }],
        [{ text: 'Bring this ticket when you collect the machine.', style: STYLE.strong }],
      ),
    ];
  });
}
