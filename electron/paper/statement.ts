import type { Statement } from './content.ts';
import { facts } from './furniture/facts.ts';
import { fullPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { dashList, paragraph, section } from './furniture/paragraphs.ts';
import { parties } from './furniture/parties.ts';
import type { Block, Sheet } from './furniture/sheet.ts';
import { table } from './furniture/table.ts';
import { cell, type Row } from './furniture/table-rows.ts';

/** A customer's account over a time: what was owed before, every bill and payment, and what is open. */
export function drawStatement(content: Statement, fingerprint: string): Uint8Array {
  return fullPages(content, fingerprint, (sheet) => {
    const { date } = sheet.writing;
    return [
      parties(sheet),
      section(sheet, 'Account', [entries(sheet, content)], {
        aside: `${date(content.from)} to ${date(content.to)}`,
      }),
      ...(content.openInvoices.length > 0 ? [open(sheet, content)] : []),
      ...(content.terms.length > 0
        ? [section(sheet, 'Terms', [dashList(sheet, content.terms, STYLE.cell)])]
        : []),
    ];
  });
}

function entries(sheet: Sheet, content: Statement): Block {
  const { money, date } = sheet.writing;
  const balance = (words: string, on: string, amount: number, style = STYLE.cellStrong): Row => ({
    cells: [
      cell(date(on), style),
      cell(words, style),
      cell(''),
      cell(''),
      cell(''),
      cell(''),
      cell(money(amount), style),
    ],
  });
  const block = table(sheet, {
    columns: [
      { heading: 'Date', width: 'fit' },
      { heading: 'What', width: 1 },
      { heading: 'Number', width: 'fit' },
      { heading: 'Job', width: 'fit' },
      { heading: 'Charged', width: 'fit', align: 'right' },
      { heading: 'Paid or credited', width: 'fit', align: 'right' },
      { heading: 'Balance', width: 'fit', align: 'right' },
    ],
    rows: [
      balance('Owed before', content.from, content.opening),
      ...content.entries.map((entry) => ({
        cells: [
          cell(date(entry.on)),
          cell(entry.what),
          cell(entry.number),
          cell(entry.job),
          cell(entry.amount >= 0 ? money(entry.amount) : ''),
          cell(entry.amount < 0 ? money(-entry.amount) : ''),
          cell(money(entry.balance)),
        ],
      })),
      balance(
        content.closing < 0 ? 'Owed to you' : content.closing > 0 ? 'Owed by you' : 'Nothing owed',
        content.to,
        Math.abs(content.closing),
        STYLE.total,
      ),
    ],
  });
  return { ...block, endKeepsNext: true };
}

/** The invoices that are not paid, and how long they have been due. */
function open(sheet: Sheet, { openInvoices, ages, unapplied }: Statement): Block {
  const { money, date } = sheet.writing;
  const invoices = table(sheet, {
    columns: [
      { heading: 'Invoice', width: 1 },
      { heading: 'Job', width: 1 },
      { heading: 'Invoiced', width: 1 },
      { heading: 'Due', width: 1 },
      { heading: 'Open', width: 1, align: 'right' },
    ],
    rows: openInvoices.map((invoice) => ({
      cells: [
        cell(invoice.number),
        cell(invoice.job),
        cell(date(invoice.invoicedOn)),
        cell(date(invoice.dueOn)),
        cell(money(invoice.open), STYLE.cellStrong),
      ],
    })),
  });
  const aged = table(sheet, {
    columns: ages.map(({ label }) => ({ heading: label, width: 1, align: 'right' as const })),
    rows: [{ cells: ages.map(({ amount }) => cell(money(amount), STYLE.cellStrong)) }],
    together: true,
  });
  return section(sheet, 'Open invoices', [
    invoices,
    paragraph(sheet, 'What is open, by days since it was due:', STYLE.soft),
    aged,
    ...(unapplied > 0
      ? [
          facts(sheet, [
            ['Paid and not applied', `${money(unapplied)}, which comes off what is open.`],
          ]),
        ]
      : []),
  ]);
}
