import type { OrderedLine, PurchaseOrder } from './content.ts';
import { fullPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { paragraph, section } from './furniture/paragraphs.ts';
import type { Block, Sheet } from './furniture/sheet.ts';
import { table } from './furniture/table.ts';
import { type Cell, cell } from './furniture/table-rows.ts';

/** What is ordered from a supplier, in their numbers, and where it goes. */
export function drawPurchaseOrder(content: PurchaseOrder, fingerprint: string): Uint8Array {
  return fullPages(content, fingerprint, (sheet) => [
    sides(sheet, content),
    section(sheet, 'Please send', [lines(sheet, content.lines), sums(sheet, content)]),
    ...(content.note === '' ? [] : [section(sheet, 'Note', [paragraph(sheet, content.note)])]),
    paragraph(
      sheet,
      `Please put ${content.number} on the delivery note and the bill. Tell us before you send anything at another price, or anything in place of what is ordered.`,
      STYLE.soft,
    ),
  ]);
}

/** Who it goes to, and where the goods go. */
function sides(
  sheet: Sheet,
  { supplier, accountNumber, expectedOn, shop, issuedBy }: PurchaseOrder,
) {
  const side = (name: string, words: readonly string[]): Cell => ({
    paragraphs: [
      { text: name, style: STYLE.strong },
      ...words.filter((text) => text.trim() !== '').map((text) => ({ text, style: STYLE.soft })),
    ],
  });
  const { addressLines, phone, email } = supplier;
  return table(sheet, {
    columns: [
      { heading: 'To', width: 1.1 },
      { heading: 'Deliver to', width: 1.1 },
      { heading: 'Order', width: 1 },
    ],
    rows: [
      {
        cells: [
          side(supplier.name, [...addressLines, phone, email]),
          side(shop.name, shop.addressLines),
          side(expectedOn === null ? '' : `Expected ${sheet.writing.date(expectedOn)}`, [
            accountNumber === '' ? '' : `Our account with you: ${accountNumber}`,
            `Ordered by ${issuedBy}`,
          ]),
        ],
      },
    ],
  });
}

function lines(sheet: Sheet, ordered: readonly OrderedLine[]): Block {
  const { money, date } = sheet.writing;
  const about = ({ description, ownNumber, job, expectedOn }: OrderedLine): Cell => ({
    paragraphs: [
      { text: description, style: STYLE.cell },
      ...[
        ownNumber === '' ? '' : `Our number ${ownNumber}`,
        job === '' ? '' : `For ${job}`,
        expectedOn === null ? '' : `Wanted by ${date(expectedOn)}`,
      ]
        .filter((text) => text !== '')
        .map((text) => ({ text, style: STYLE.cellSoft })),
    ],
  });
  const block = table(sheet, {
    columns: [
      { heading: 'Your number', width: 'fit' },
      { heading: 'Description', width: 1 },
      { heading: 'Quantity', width: 'fit', align: 'right' },
      { heading: 'Unit price', width: 'fit', align: 'right' },
      { heading: 'Amount', width: 'fit', align: 'right' },
    ],
    rows: ordered.map((line) => ({
      cells: [
        cell(line.supplierNumber, STYLE.cellStrong),
        about(line),
        cell(`${line.quantity} ${line.unit}`.trim()),
        cell(money(line.unitCost)),
        cell(money(line.amount), STYLE.cellStrong),
      ],
    })),
  });
  // A total has some of what it is the sum of above it.
  return { ...block, endKeepsNext: true };
}

function sums(sheet: Sheet, { goods, carriage, total }: PurchaseOrder): Block {
  const { money } = sheet.writing;
  const width = sheet.width * 0.4;
  return table(sheet, {
    bare: true,
    together: true,
    x: sheet.left + sheet.width - width,
    width,
    columns: [
      { heading: '', width: 1 },
      { heading: '', width: 'fit', align: 'right' },
    ],
    rows: [
      { cells: [cell('Goods'), cell(money(goods))] },
      { cells: [cell('Carriage'), cell(carriage === 0 ? 'free' : money(carriage))] },
      {
        cells: [cell('Total before tax', STYLE.total), cell(money(total), STYLE.total)],
      },
    ],
  });
}
