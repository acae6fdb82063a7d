import { Temporal } from 'temporal-polyfill';
import type { JobState } from '../counter/job-state.ts';

/**
 * What it costs to leave a machine in the shop. Money: integer minor units. Whether storage may be charged at
 * all, and after what notice, local law decides.
 */

export interface StorageRule {
  /** Days after the machine could be collected that cost nothing. */
  readonly afterDays: number;
  readonly perDay: number;
  /** The most that is charged; null for no end. */
  readonly cap: number | null;
}

/** States in which a machine waits for whoever brought it. */
export const COLLECTABLE: readonly JobState[] = ['ready', 'stopped'];

/** Days from the one on which a machine could be collected to another; zero on that very day. */
export const daysLeft = (since: string, today: string): number =>
  Math.max(0, Temporal.PlainDate.from(since).until(today, { largestUnit: 'day' }).days);

export interface StorageFee {
  /** Days that the machine has waited. */
  waited: number;
  /** Of those, the days that are charged. */
  charged: number;
  /** All that they cost, at most the cap. */
  amount: number;
  /** Of that, what has not been billed. */
  toBill: number;
}

/**
 * The storage fee of a machine that was not collected: the first day that costs is the one after the days
 * without charge.
 * @param since calendar date on which it could be collected
 * @param billed what of it was billed before, less what was credited of that
 * @throws RangeError when an amount is no whole number of zero or more
 */
export function storageFee(
  { since, today, billed }: { since: string; today: string; billed: number },
  { afterDays, perDay, cap }: StorageRule,
): StorageFee {
  for (const figure of [afterDays, perDay, cap ?? 0])
    if (!Number.isSafeInteger(figure) || figure < 0)
      throw new RangeError('A rule of storage is made of whole numbers, zero or more.');
  if (!Number.isSafeInteger(billed)) throw new RangeError('What was billed is a whole number.');
  const waited = daysLeft(since, today);
  const charged = Math.max(0, waited - afterDays);
  const amount = Math.min(charged * perDay, cap ?? Number.MAX_SAFE_INTEGER);
  return { waited, charged, amount, toBill: Math.max(0, amount - billed) };
}

const ONE = 1000;

/**
 * The fee as a line of a bill: by the day where it comes out in whole days, else in one sum.
 * @returns null when there is nothing to bill
 */
export function storageLine({ charged, toBill }: StorageFee, { afterDays, perDay }: StorageRule) {
  if (toBill === 0) return null;
  const free = afterDays === 0 ? '' : ` after ${dayCount(afterDays)} without charge`;
  const line = {
    kind: 'fee' as const,
    partId: null,
    unitCost: null,
    priceFrom: 'storage-rule' as const,
    workKind: '',
    discount: null,
    note: '',
  };
  return toBill % perDay === 0
    ? {
        ...line,
        description: `Storage${free}`,
        quantity: (toBill / perDay) * ONE,
        unit: 'day',
        unitPrice: perDay,
      }
    : {
        ...line,
        description: `Storage, ${dayCount(charged)}${free}, up to the most that is charged`,
        quantity: ONE,
        unit: 'pc',
        unitPrice: toBill,
      };
}

const dayCount = (days: number): string => (days === 1 ? '1 day' : `${days} days`);
