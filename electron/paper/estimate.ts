import { findings } from './bench-record.ts';
import type { Estimate } from './content.ts';
import type { TextStyle } from './fonts/typesetter.ts';
import { declined } from './furniture/beside-approval.ts';
import { billLines, totalsBlock } from './furniture/bill.ts';
import { fullPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { dashList, paragraph, section } from './furniture/paragraphs.ts';
import { parties } from './furniture/parties.ts';
import type { Block, Sheet } from './furniture/sheet.ts';
import { signatureBoxes } from './furniture/signatures.ts';
import { table } from './furniture/table.ts';
import { cell } from './furniture/table-rows.ts';

/** An option of no more lines than these is not parted between two pages. */
const FEW_LINES = 12;

/** What the work would cost, to be approved before it is done. */
export function drawEstimate(content: Estimate, fingerprint: string): Uint8Array {
  return fullPages(content, fingerprint, (sheet) => {
    const until =
      content.validUntil === null
        ? `Revision ${content.revision}`
        : `Revision ${content.revision}, valid until ${sheet.writing.date(content.validUntil)}`;
    const several = content.options.length > 1;
    return [
      parties(sheet),
      ...findings(sheet, content.findings),
      ...(several
        ? [section(sheet, 'Options, side by side', [sideBySide(sheet, content)], { aside: until })]
        : []),
      ...content.options.map(({ label, lines, totals }, index) =>
        section(
          sheet,
          several ? `Option ${index + 1}: ${label}` : 'Work and parts',
          [billLines(sheet, lines), totalsBlock(sheet, totals)],
          several ? { together: lines.length <= FEW_LINES } : { aside: until },
        ),
      ),
      ...declined(sheet, content),
      ...(content.note.trim() === ''
        ? []
        : [section(sheet, 'Note', [paragraph(sheet, content.note)])]),
      ...(content.terms.length > 0
        ? [
            // The approval is put to these, and is not alone on a page.
            {
              ...section(sheet, 'Terms', [dashList(sheet, content.terms, STYLE.cell)], {
                together: true,
              }),
              keepsNext: true,
            },
          ]
        : []),
      section(
        sheet,
        'Approval',
        [
          signatureBoxes(
            sheet,
            [{ label: 'Customer', signature: null }],
            [
              ...(several
                ? [{ text: 'Option taken: __________________________', style: STYLE.strong }]
                : []),
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

/** What each option comes to, one column each, before the lines of any. */
function sideBySide(sheet: Sheet, { options }: Estimate): Block {
  const { money } = sheet.writing;
  const figures = (total: (option: Estimate['options'][number]) => number) =>
    options.map((option) => money(total(option)));
  const discounted = options.some(({ totals }) => totals.discount !== undefined);
  const taxed = options.some(({ totals }) => totals.taxes.length > 0);
  const within = options.some(({ totals }) => totals.pricesIncludeTax);
  const takenOut = options.some(({ totals }) => totals.takenOut !== undefined);
  const taxesOf = (taxes: readonly { amount: number }[]) =>
    taxes.reduce((sum, { amount }) => sum + amount, 0);
  const row = (words: string, cells: readonly string[], style: TextStyle = STYLE.cell) => ({
    cells: [cell(words, style), ...cells.map((text) => cell(text, style))],
  });
  return table(sheet, {
    together: true,
    columns: [
      { heading: '', width: 1 },
      ...options.map(({ label }, index) => ({
        heading: `${index + 1}: ${label}`,
        width: 1,
        align: 'right' as const,
      })),
    ],
    rows: [
      row(
        'Lines',
        options.map(({ lines }) => String(lines.length)),
      ),
      row(
        'Subtotal',
        figures(({ totals }) => totals.subtotal),
      ),
      ...(discounted
        ? [
            row(
              'Discount',
              figures(({ totals }) => -(totals.discount?.amount ?? 0)),
            ),
          ]
        : []),
      ...(taxed
        ? [
            row(
              within ? 'Tax, within the prices' : 'Tax',
              figures(({ totals }) => taxesOf(totals.taxes)),
            ),
          ]
        : []),
      ...(takenOut
        ? [
            row(
              'Tax, taken out of the prices',
              figures(({ totals }) => -taxesOf(totals.takenOut ?? [])),
            ),
          ]
        : []),
      row(
        'Total',
        figures(({ totals }) => totals.total),
        STYLE.cellStrong,
      ),
    ],
  });
}
