import type { ClaimTicket } from './content.ts';
import { cautionBox } from './furniture/cautions.ts';
import { facts } from './furniture/facts.ts';
import { fullPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { localLaw } from './furniture/local-law.ts';
import { dashList, paragraph, section } from './furniture/paragraphs.ts';
import { parties } from './furniture/parties.ts';
import { signatureBoxes } from './furniture/signatures.ts';

/** What the customer takes away at intake: what was left, what was said and what was agreed. */
export function drawClaimTicket(content: ClaimTicket, fingerprint: string): Uint8Array {
  return fullPages(content, fingerprint, (sheet) => {
    const { money, date } = sheet.writing;
    const agreed = (amount: number | null) => (amount === null ? 'none agreed' : money(amount));
    const { promisedFor } = content.job;
    return [
      parties(sheet),
      section(sheet, 'What the customer says', [paragraph(sheet, content.complaint)]),
      section(sheet, 'As taken in', [
        facts(sheet, [
          ['Symptoms seen', content.symptoms.join('; ')],
          ['Condition', content.condition],
          ['Left with it', content.leftWith.join('; ') || 'nothing else'],
          ['Fuel in the tank', content.fuel],
          ['Last service', content.lastService],
        ]),
      ]),
      section(sheet, 'What was agreed', [
        facts(sheet, [
          ['Promised for', promisedFor === null ? 'no date promised' : date(promisedFor)],
          ['Diagnosis fee', agreed(content.diagnosisFee)],
          ['Spending limit', `${agreed(content.spendingLimit)} (without a further call)`],
          ['Deposit', agreed(content.deposit)],
          ['Reach the customer by', content.reachBy],
        ]),
      ]),
      ...(content.terms.length > 0
        ? [section(sheet, 'Terms', [dashList(sheet, content.terms)])]
        : []),
      ...(content.cautions.length > 0 ? [cautionBox(sheet, content.cautions)] : []),
      signatureBoxes(sheet, [{ label: 'Customer', signature: content.signature }]),
      paragraph(sheet, 'Bring this ticket when you collect the machine.', STYLE.strong),
      localLaw(sheet),
    ];
  });
}
