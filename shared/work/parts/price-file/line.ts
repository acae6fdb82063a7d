import { divideRounded, type Rounding } from '../../../money/round.ts';
import { foldNumber } from '../../fold.ts';
import { type AmountForm, readAmount } from './decimal-amount.ts';
import type { DecimalMark, LineProblem, PricedBy, PriceFileField } from './words.ts';

/** A cell as a file holds it: text, or a spreadsheet's number or date. */
export type Cell = string | number | Date;

/** How the lines of a file are to be read. */
export interface LineForm {
  /** The place of each field among a line's cells, from zero; null where the file has none. */
  columns: Record<PriceFileField, number | null>;
  decimalMark: DecimalMark;
  pricedBy: PricedBy;
  /** Decimals of the currency. */
  digits: number;
  rounding: Rounding;
}

/** What a line offers. Amounts are minor units for one unit of the part, the pack is in thousandths. */
export interface PriceLine {
  number: string;
  numberKey: string;
  description: string;
  cost: number;
  listPrice: number | null;
  packSize: number;
  coreCharge: number;
  supersededBy: string;
}

export type ReadLine = { line: PriceLine } | { problem: LineProblem };

const LONGEST_NUMBER = 60;
const LONGEST_DESCRIPTION = 200;
const ONE = 1000;

// What stands where bytes were no letters, and control characters, a tab and line breaks aside.
const DAMAGED = /\ufffd|[\p{Cc}--[\t\r\n]]|\p{Cs}/v;

const tidy = (text: string): string => text.normalize('NFC').replace(/\s+/g, ' ').trim();

/** Reads one line of a price file. Nothing is thrown: what can't be used says why. */
export function readPriceLine(cells: readonly Cell[], form: LineForm): ReadLine {
  const at = (field: PriceFileField): Cell => {
    const column = form.columns[field];
    return column === null ? '' : (cells[column] ?? '');
  };
  const needed = Object.values(form.columns).filter((column) => column !== null);
  if (needed.some((column) => cells[column] instanceof Date)) return { problem: 'date' };
  if (needed.some((column) => DAMAGED.test(String(cells[column] ?? ''))))
    return { problem: 'letters' };

  const number = tidy(String(at('number')));
  const numberKey = foldNumber(number);
  if (numberKey === '') return { problem: 'no-number' };
  if (number.length > LONGEST_NUMBER) return { problem: 'number-too-long' };
  const supersededBy = tidy(String(at('supersededBy')));
  if (supersededBy.length > LONGEST_NUMBER) return { problem: 'number-too-long' };
  if (foldNumber(supersededBy) === numberKey) return { problem: 'replaces-itself' };

  const money = { mark: form.decimalMark, digits: form.digits, rounding: form.rounding };
  const cost = optional(at('cost'), money);
  if (typeof cost === 'string') return { problem: problemOf(cost, 'cost') };
  if (cost === null || cost === 0) return { problem: 'no-cost' };
  const listPrice = optional(at('listPrice'), money);
  if (typeof listPrice === 'string') return { problem: problemOf(listPrice, 'list-price') };
  const coreCharge = optional(at('coreCharge'), money);
  if (typeof coreCharge === 'string') return { problem: problemOf(coreCharge, 'core-charge') };
  const packSize = packOf(at('packSize'), money);
  if (packSize === null) return { problem: 'pack' };

  const forOne = (amount: number): number =>
    form.pricedBy === 'one'
      ? amount
      : Number(divideRounded(BigInt(amount) * BigInt(ONE), BigInt(packSize), form.rounding));
  return {
    line: {
      number,
      numberKey,
      description: shortened(tidy(String(at('description')))),
      cost: forOne(cost),
      listPrice: listPrice === null ? null : forOne(listPrice),
      packSize,
      coreCharge: coreCharge ?? 0,
      supersededBy: foldNumber(supersededBy) === '' ? '' : supersededBy,
    },
  };
}

type Why = 'unreadable' | 'below-zero' | 'too-much';

const problemOf = (why: Why, field: 'cost' | 'list-price' | 'core-charge'): LineProblem =>
  why === 'unreadable' ? field : why;

/** An amount that a line may do without. */
function optional(cell: Cell, form: AmountForm): number | null | Why {
  const read = readAmount(cell instanceof Date ? '' : cell, form);
  if (read.ok) return read.amount;
  return read.why === 'empty' ? null : read.why;
}

/** Thousandths; a unit's word may stand after the figure: `10 pcs`. */
function packOf(cell: Cell, { mark, rounding }: AmountForm): number | null {
  const bare = typeof cell === 'string' ? cell.replace(/(\d)\s*\p{L}{1,10}\.?\s*$/u, '$1') : cell;
  if (bare instanceof Date) return null;
  const read = readAmount(bare, { mark, digits: 3, rounding });
  if (read.ok) return read.amount > 0 && read.amount <= 1_000_000_000 ? read.amount : null;
  return read.why === 'empty' ? ONE : null;
}

/** Cut between letters, never through one. */
const shortened = (text: string): string =>
  text.length <= LONGEST_DESCRIPTION
    ? text
    : text
        .slice(0, LONGEST_DESCRIPTION)
        .replace(/[\ud800-\udbff]$/, '')
        .trimEnd();
