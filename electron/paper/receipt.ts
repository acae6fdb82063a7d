import type { Receipt } from './content.ts';
import { facts } from './furniture/facts.ts';
import { fullPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { dashList, paragraph, section } from './furniture/paragraphs.ts';
import { parties } from './furniture/parties.ts';
import type { Sheet } from './furniture/sheet.ts';
import { table } from './furniture/table.ts';
import { cell } from './furniture/table-rows.ts';

/** Money that changed hands: how much, by what means, and what it is set against. */
export function drawReceipt(content: Receipt, fingerprint: string): Uint8Array {
  return fullPages(content, fingerprint, (sheet) => [
    parties(sheet),
    section(
      sheet,
      content.back ? 'Given back to the customer' : 'Received from the customer',
      [
        paragraph(sheet, `${content.what}: ${sheet.writing.money(content.amount)}`, STYLE.sum),
        facts(sheet, handing(sheet, content)),
      ],
      { together: true },
    ),
    section(sheet, content.back ? 'What it came from' : 'What it is for', [uses(sheet, content)]),
    ...(content.uses.some(({ open }) => open === null) && !content.back
      ? [
          dashList(
            sheet,
            ['What is held or kept belongs to the customer until an invoice is set against it.'],
            STYLE.cell,
          ),
        ]
      : []),
  ]);
}

function handing(
  sheet: Sheet,
  { method, reference, given, change }: Receipt,
): [label: string, words: string][] {
  const { money } = sheet.writing;
  return [
    ['By', method],
    ['Reference', reference],
    ['Cash given', given === null ? '' : money(given)],
    ['Change', given === null ? '' : money(change)],
  ];
}

function uses(sheet: Sheet, { uses: rows, amount }: Receipt) {
  const { money } = sheet.writing;
  return table(sheet, {
    columns: [
      { heading: 'Job', width: 'fit' },
      { heading: 'What', width: 1 },
      { heading: 'Amount', width: 'fit', align: 'right' },
      { heading: 'Left to pay', width: 'fit', align: 'right' },
    ],
    rows: [
      ...rows.map((row) => ({
        cells: [
          cell(row.job),
          cell(row.what),
          cell(money(row.amount), STYLE.cellStrong),
          cell(row.open === null ? '–' : money(row.open)),
        ],
      })),
      ...(rows.length > 1
        ? [
            {
              cells: [
                cell(''),
                cell('Together', STYLE.cellStrong),
                cell(money(amount), STYLE.cellStrong),
                cell(''),
              ],
            },
          ]
        : []),
    ],
  });
}
