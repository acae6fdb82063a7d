import type { PaperLine, PaymentLine, Totals } from '../content.ts';
import type { TextStyle } from '../fonts/typesetter.ts';
import { STYLE } from './ink.ts';
import { paragraph } from './paragraphs.ts';
import { type Block, drawLines, heightOf, type Sheet } from './sheet.ts';
import { table } from './table.ts';
import { type Cell, cell, type Row } from './table-rows.ts';

const KIND_WORDS = {
  labour: 'Labour',
  part: 'Part',
  outside: 'Outside work',
  supplies: 'Supplies',
  fee: 'Fee',
  'core-charge': 'Core charge',
  'core-credit': 'Core credit',
} satisfies Record<PaperLine['kind'], string>;

/** The lines of a bill, figures to the right. */
export function billLines(sheet: Sheet, lines: PaperLine[]): Block {
  if (lines.length === 0) return paragraph(sheet, 'No lines.', STYLE.soft);
  const { money } = sheet.writing;
  const numbered = lines.some(({ partNumber }) => partNumber.trim() !== '');
  const block = table(sheet, {
    columns: [
      { heading: 'Description', width: 1 },
      ...(numbered ? [{ heading: 'Part number', width: 'fit' } as const] : []),
      { heading: 'Kind', width: 'fit' },
      { heading: 'Quantity', width: 'fit', align: 'right' },
      { heading: 'Unit price', width: 'fit', align: 'right' },
      { heading: 'Amount', width: 'fit', align: 'right' },
    ],
    rows: lines.map((line) => ({
      cells: [
        described(sheet, line),
        ...(numbered ? [cell(line.partNumber)] : []),
        cell(KIND_WORDS[line.kind]),
        cell(`${line.quantity} ${line.unit}`.trim()),
        cell(money(line.unitPrice)),
        cell(money(line.amount), STYLE.cellStrong),
      ],
    })),
  });
  // A total has some of what it is the sum of above it.
  return { ...block, endKeepsNext: true };
}

/** What the line is for, what is taken off it, and what is to be said of it. */
function described({ writing }: Sheet, { description, discount, note }: PaperLine): Cell {
  return {
    paragraphs: [
      { text: description, style: STYLE.cell },
      ...(discount === undefined
        ? []
        : [
            {
              text: `${discountWords(discount)}: ${writing.money(-discount.amount)}`,
              style: STYLE.cellSoft,
            },
          ]),
      ...(note === undefined ? [] : [{ text: note, style: STYLE.cellSoft }]),
    ],
  };
}

const discountWords = ({ share }: { share: string }): string => `Discount ${share}`.trim();

/** Something paid, owed or left over, below the total. */
interface Balance {
  label: string;
  amount: number;
  /** Set as large as the total. */
  large?: boolean;
}

/**
 * Subtotal, taxes, total and what follows from it, in the right half and kept together; how amounts are
 * rounded, to the left of them.
 */
export function totalsBlock(sheet: Sheet, totals: Totals, balances: Balance[] = []): Block {
  const width = sheet.width * 0.56;
  const { money } = sheet.writing;
  const within = totals.pricesIncludeTax === true;
  const row = (label: string, amount: string, style: TextStyle): Row => ({
    cells: [cell(label, style), cell(amount, style)],
  });
  const block = table(sheet, {
    bare: true,
    together: true,
    x: sheet.left + sheet.width - width,
    width,
    columns: [
      { heading: '', width: 1 },
      { heading: '', width: 'fit', align: 'right' },
    ],
    rows: [
      row('Subtotal', money(totals.subtotal), STYLE.cell),
      ...(totals.discount === undefined
        ? []
        : [row(discountWords(totals.discount), money(-totals.discount.amount), STYLE.cell)]),
      ...(totals.takenOut ?? []).map((tax) =>
        row(
          `${tax.name} ${tax.rate} taken out of ${money(tax.base)}`,
          money(-tax.amount),
          STYLE.cell,
        ),
      ),
      ...(within ? [row('Total', money(totals.total), STYLE.total)] : []),
      ...totals.taxes.map((tax) =>
        row(
          `${within ? 'Within the total: ' : ''}${tax.name} ${tax.rate} ${within ? 'in' : 'on'} ${money(tax.base)}`,
          money(tax.amount),
          STYLE.cell,
        ),
      ),
      ...(totals.exemptBy === undefined
        ? []
        : [row(`No tax: exempt by certificate ${totals.exemptBy}`, money(0), STYLE.cell)]),
      ...(within ? [] : [row('Total', money(totals.total), STYLE.total)]),
      ...balances.map(({ label, amount, large }) =>
        row(label, money(amount), large ? STYLE.total : STYLE.cell),
      ),
    ],
  });
  const rounding = sheet.lines(totals.rounding, STYLE.soft, sheet.width - width - 24);
  return {
    ...block,
    lead: Math.max(block.lead, heightOf(rounding)),
    draw: () => {
      if (rounding.length > 0) {
        sheet.structure.text('P', () => drawLines(sheet, rounding, sheet.left, sheet.y + 3));
      }
      const least = sheet.y + heightOf(rounding);
      block.draw();
      sheet.y = Math.max(sheet.y, least);
    },
  };
}

/** What was paid and given back, and what is left to pay after that, in words that fit its sign. */
export function paymentsAndDue(
  sheet: Sheet,
  { payments, due, dueOn = null }: { payments: PaymentLine[]; due: number; dueOn?: string | null },
): Balance[] {
  const { instant, date } = sheet.writing;
  const paid = payments.map(({ what, method, at, amount }) => ({
    label: `${what}, ${method}, ${instant(at)}`,
    amount: -amount,
  }));
  if (paid.length === 0 && due === 0) return [{ label: 'Nothing to pay', amount: 0, large: true }];
  return [...paid, dueBalance(due, dueOn === null ? '' : ` by ${date(dueOn)}`)];
}

function dueBalance(due: number, when: string): Balance {
  if (due === 0) return { label: 'Paid in full', amount: 0, large: true };
  if (due < 0) return { label: 'Owed to the customer', amount: -due, large: true };
  return { label: `To pay${when}`, amount: due, large: true };
}
