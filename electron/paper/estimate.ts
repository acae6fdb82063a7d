import type { Estimate } from './content.ts';
import { billLines, totalsBlock } from './furniture/bill.ts';
import { fullPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { dashList, paragraph, section } from './furniture/paragraphs.ts';
import { parties } from './furniture/parties.ts';
import { signatureBoxes } from './furniture/signatures.ts';

/** What the work would cost, to be approved before it is done. */
export function drawEstimate(content: Estimate, fingerprint: string): Uint8Array {
  return fullPages(content, fingerprint, (sheet) => {
    const until =
      content.validUntil === null
        ? `Revision ${content.revision}`
        : `Revision ${content.revision}, valid until ${sheet.writing.date(content.validUntil)}`;
    return [
      parties(sheet),
      section(
        sheet,
        'Work and parts',
        [billLines(sheet, content.lines), totalsBlock(sheet, content.totals)],
        { aside: until },
      ),
      ...(content.note.trim() === ''
        ? []
        : [section(sheet, 'Note', [paragraph(sheet, content.note)])]),
      ...(content.terms.length > 0
        ? [section(sheet, 'Terms', [dashList(sheet, content.terms, STYLE.cell)])]
        : []),
      section(
        sheet,
        'Approval',
        [
          signatureBoxes(
            sheet,
            [{ label: 'Customer', signature: null, typedBy: content.issuedBy }],
            [
              { text: 'Approved up to: ______________________', style: STYLE.strong },
              {
                text: 'Nothing beyond the approved amount is done without another approval.',
                style: STYLE.text,
              },
            ],
          ),
        ],
        { together: true },
      ),
    ];
  });
}
