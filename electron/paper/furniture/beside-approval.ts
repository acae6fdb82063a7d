import type { Invoice } from '../content.ts';
import { STYLE } from './ink.ts';
import { paragraph, section } from './paragraphs.ts';
import type { Block, Sheet } from './sheet.ts';
import { table } from './table.ts';
import { cell } from './table-rows.ts';

/** How the bill differs from what was approved, line by line; nothing when it doesn't. */
export function differences(sheet: Sheet, { differences: lines }: Invoice): Block[] {
  if (lines.length === 0) return [];
  const { money } = sheet.writing;
  const block = table(sheet, {
    columns: [
      { heading: 'Line', width: 1 },
      { heading: 'Approved', width: 'fit', align: 'right' },
      { heading: 'Billed', width: 'fit', align: 'right' },
      { heading: 'Difference', width: 'fit', align: 'right' },
    ],
    rows: lines.map(({ description, approved, billed }) => ({
      cells: [
        cell(description),
        cell(approved === null ? 'not in it' : money(approved)),
        cell(billed === null ? 'left out' : money(billed)),
        cell(money((billed ?? 0) - (approved ?? 0)), STYLE.cellStrong),
      ],
    })),
  });
  return [
    section(sheet, 'Otherwise than approved', [
      block,
      paragraph(sheet, 'Before discount on the whole, and tax.', STYLE.soft),
    ]),
  ];
}

/** What the customer did not take: it was not done, and is not billed. */
export function declined(sheet: Sheet, { declined: lines }: Pick<Invoice, 'declined'>): Block[] {
  if (lines.length === 0) return [];
  const block = table(sheet, {
    columns: [
      { heading: 'Line', width: 1 },
      { heading: 'Estimated at', width: 'fit', align: 'right' },
    ],
    rows: lines.map(({ description, amount }) => ({
      cells: [cell(description), cell(sheet.writing.money(amount))],
    })),
  });
  return [section(sheet, 'Declined by the customer, and not done', [block])];
}
