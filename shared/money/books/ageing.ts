import { daysFrom } from '../../work/calendar.ts';
import { sumMinor } from '../amount.ts';

/** How old what customers owe is, by thirty days. Money: integer minor units. */

export const AGES = ['not-due', 'to-30', 'to-60', 'to-90', 'over-90'] as const;
export type Age = (typeof AGES)[number];

export const AGE_LABELS: Record<Age, string> = {
  'not-due': 'Not due',
  'to-30': 'Up to 30 days',
  'to-60': '31 to 60 days',
  'to-90': '61 to 90 days',
  'over-90': 'Over 90 days',
};

/** From which day age is counted: the day it was due, or the day it was invoiced. */
export const AGE_BASES = ['due-date', 'invoice-date'] as const;
export type AgeBasis = (typeof AGE_BASES)[number];

/** Up to and with how many days each age goes. */
const LAST_DAY: readonly (readonly [Age, number])[] = [
  ['to-30', 30],
  ['to-60', 60],
  ['to-90', 90],
];

/** What is open of an invoice. Dates are ISO calendar dates. */
export interface OpenItem {
  readonly invoicedOn: string;
  /** Null: due on the day of the invoice. */
  readonly dueOn: string | null;
  readonly open: number;
}

/**
 * Days since an item was due or invoiced, as the basis says; below zero when that day is still to come.
 * @param on ISO calendar date
 */
export function daysOld(item: OpenItem, basis: AgeBasis, on: string): number {
  const from = basis === 'due-date' ? (item.dueOn ?? item.invoicedOn) : item.invoicedOn;
  return daysFrom(from, on);
}

/**
 * The age of an item on a day. By due date, what is due on that day or later is not overdue; by invoice date
 * an item of that same day is already among those up to 30 days.
 */
export function ageOf(item: OpenItem, basis: AgeBasis, on: string): Age {
  const days = daysOld(item, basis, on);
  if (basis === 'due-date' && days <= 0) return 'not-due';
  return LAST_DAY.find(([, last]) => days <= last)?.[0] ?? 'over-90';
}

export type AgedAmounts = Record<Age, number>;

/** What is open, by age; the ages add up to all that is open. */
export function ageing(items: readonly OpenItem[], basis: AgeBasis, on: string): AgedAmounts {
  const of = (age: Age) =>
    sumMinor(items.filter((item) => ageOf(item, basis, on) === age).map(({ open }) => open));
  return {
    'not-due': of('not-due'),
    'to-30': of('to-30'),
    'to-60': of('to-60'),
    'to-90': of('to-90'),
    'over-90': of('over-90'),
  };
}
