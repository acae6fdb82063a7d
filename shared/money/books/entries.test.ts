import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LINE_KINDS, PAYMENT_KINDS, PAYMENT_METHODS } from '../../work/vocabulary.ts';
import { sumMinor } from '../amount.ts';
import { billTotals, TAX_BASES } from '../bill.ts';
import { ROUNDINGS } from '../round.ts';
import { DEPOSITS, RECEIVABLE } from './accounts.ts';
import {
  applicationPostings,
  type BilledAs,
  balances,
  creditNotePostings,
  invoicePostings,
  type Posting,
  paymentPostings,
} from './entries.ts';
import { netByLine } from './net-lines.ts';

const KINDS = { State: ['part', 'supplies'], County: ['part', 'labour'] };
const kindsTaxed = ({ name }: { name: string }) =>
  Object.entries(KINDS).find(([tax]) => tax === name)?.[1];

const line = fc.record({
  kind: fc.constantFrom(...LINE_KINDS.filter((kind) => kind !== 'core-credit')),
  amount: fc.integer({ min: 0, max: 5_000_000 }),
});
const coreBack = fc.record({
  kind: fc.constant('core-credit' as const),
  amount: fc.integer({ min: -20_000, max: 0 }),
});

/** Bills as `billTotals` draws them up: taxes on top or within, a discount on the whole, cores. */
const bill: fc.Arbitrary<BilledAs> = fc
  .record({
    lines: fc.array(fc.oneof({ weight: 5, arbitrary: line }, coreBack), {
      minLength: 1,
      maxLength: 8,
    }),
    rates: fc.tuple(fc.nat({ max: 250_000 }), fc.nat({ max: 100_000 })),
    discount: fc.option(
      fc.oneof(
        fc.record({ by: fc.constant('share' as const), ppm: fc.integer({ min: 1, max: 1e6 }) }),
        fc.record({ by: fc.constant('amount' as const), amount: fc.integer({ min: 1, max: 1e6 }) }),
      ),
    ),
    rounding: fc.constantFrom(...ROUNDINGS),
    basis: fc.constantFrom(...TAX_BASES),
    pricesIncludeTax: fc.boolean(),
    exempt: fc.boolean(),
  })
  .map(({ lines, rates, exempt, ...rules }) => {
    const taxes = [
      { name: 'State', ratePpm: rates[0], kinds: KINDS.State },
      { name: 'County', ratePpm: rates[1], kinds: KINDS.County },
    ];
    return {
      lines,
      totals: billTotals(lines, exempt ? [] : taxes, { ...rules, takenOut: exempt ? taxes : [] }),
    };
  });

const debit = (all: readonly Posting[]) => sumMinor(all.map((posting) => posting.debit));
const credit = (all: readonly Posting[]) => sumMinor(all.map((posting) => posting.credit));

test('every entry balances, and a credit note of the whole undoes its invoice', () => {
  fc.assert(
    fc.property(bill, (issued) => {
      const entry = invoicePostings(issued, kindsTaxed);
      expect(debit(entry)).toBe(credit(entry));
      for (const posting of entry) {
        expect(Math.min(posting.debit, posting.credit)).toBe(0);
        expect(Math.max(posting.debit, posting.credit)).toBeGreaterThan(0);
      }
      const undone = balances([...entry, ...creditNotePostings(issued, kindsTaxed)]);
      expect(undone.every(({ balance }) => balance === 0)).toBe(true);
    }),
  );
});

test('what lines bring adds up to the total less its taxes, also when a tax is forgotten', () => {
  fc.assert(
    fc.property(bill, fc.boolean(), (issued, forgotten) => {
      const net = netByLine(issued, forgotten ? () => undefined : kindsTaxed);
      const { total, taxes } = issued.totals;
      expect(sumMinor(net)).toBe(total - sumMinor(taxes.map(({ amount }) => amount)));
    }),
  );
});

test('no tax within the price is taken off a line that does not bear it', () => {
  // 20 % within 120.00 of parts is 20.00; labour bears none.
  const lines = [
    { kind: 'part' as const, amount: 12_000 },
    { kind: 'labour' as const, amount: 8_000 },
  ];
  const totals = billTotals(lines, [{ name: 'VAT', ratePpm: 200_000, kinds: ['part'] }], {
    rounding: 'half-up',
    basis: 'invoice',
    pricesIncludeTax: true,
  });
  expect(netByLine({ lines, totals }, () => ['part'])).toEqual([10_000, 8_000]);
  expect(invoicePostings({ lines, totals }, () => ['part'])).toEqual([
    { account: RECEIVABLE, debit: 20_000, credit: 0 },
    { account: { name: 'Sales, parts', nature: 'income' }, debit: 0, credit: 10_000 },
    { account: { name: 'Sales, labour', nature: 'income' }, debit: 0, credit: 8_000 },
    { account: { name: 'Tax, VAT 20 %', nature: 'liability' }, debit: 0, credit: 2_000 },
  ]);
});

test('who is exempt leaves the shop what everybody leaves it, and no tax', () => {
  const lines = [
    { kind: 'part' as const, amount: 12_000 },
    { kind: 'labour' as const, amount: 8_000 },
  ];
  const totals = billTotals(lines, [], {
    rounding: 'half-up',
    basis: 'invoice',
    pricesIncludeTax: true,
    takenOut: [{ name: 'VAT', ratePpm: 200_000, kinds: ['part'] }],
  });
  expect(invoicePostings({ lines, totals }, () => undefined)).toEqual([
    { account: RECEIVABLE, debit: 18_000, credit: 0 },
    { account: { name: 'Sales, parts', nature: 'income' }, debit: 0, credit: 10_000 },
    { account: { name: 'Sales, labour', nature: 'income' }, debit: 0, credit: 8_000 },
  ]);
});

test('a core that came back bears the tax within its own price', () => {
  // 20 % within all: 120.00 of parts are 100.00; a core charged and credited comes to nothing.
  const lines = [
    { kind: 'part' as const, amount: 12_000 },
    { kind: 'core-charge' as const, amount: 2_400 },
    { kind: 'core-credit' as const, amount: -2_400 },
  ];
  const kinds = [...LINE_KINDS];
  const totals = billTotals(lines, [{ name: 'VAT', ratePpm: 200_000, kinds }], {
    rounding: 'half-up',
    basis: 'invoice',
    pricesIncludeTax: true,
  });
  expect(netByLine({ lines, totals }, () => undefined)).toEqual([10_000, 2_000, -2_000]);
});

test('a rule that changed since leaves what was posted as it was', () => {
  const lines = [
    { kind: 'part' as const, amount: 12_000 },
    { kind: 'labour' as const, amount: 8_000 },
  ];
  const totals = billTotals(lines, [{ name: 'VAT', ratePpm: 200_000, kinds: ['part'] }], {
    rounding: 'half-up',
    basis: 'invoice',
    pricesIncludeTax: true,
  });
  for (const today of [undefined, ['labour'], ['part', 'labour']])
    expect(netByLine({ lines, totals }, () => today)).toEqual([10_000, 8_000]);
});

test('a bill that its lines do not explain still balances', () => {
  const totals = { discount: 0, pricesIncludeTax: false, taxes: [], takenOut: [], total: 500 };
  const entry = invoicePostings({ lines: [{ kind: 'fee', amount: 400 }], totals }, kindsTaxed);
  expect(debit(entry)).toBe(500);
  expect(credit(entry)).toBe(500);
  expect(entry.map(({ account }) => account.name)).toContain('Sales, other');
});

/** A customer's account as the till keeps it, played in any order. */
const step = fc.oneof(
  fc.record({ does: fc.constant('invoice' as const), bill }),
  fc.record({
    does: fc.constant('pay' as const),
    kind: fc.constantFrom(...PAYMENT_KINDS),
    method: fc.constantFrom(...PAYMENT_METHODS),
    amount: fc.integer({ min: 1, max: 2_000_000 }),
  }),
  fc.record({ does: fc.constant('apply' as const), amount: fc.nat({ max: 2_000_000 }) }),
  fc.record({ does: fc.constant('credit' as const), which: fc.nat({ max: 20 }) }),
);

test('whatever the order: what is receivable is what is open, what is held is what is unapplied', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 25 }), (steps) => {
      const invoices: { bill: BilledAs; applied: number; credited: number }[] = [];
      const book: Posting[] = [];
      let unapplied = 0;
      const openOf = ({ bill: { totals }, applied, credited }: (typeof invoices)[number]) =>
        totals.total - credited - applied;
      for (const happens of steps) {
        if (happens.does === 'invoice') {
          if (happens.bill.totals.total < 0) continue;
          invoices.push({ bill: happens.bill, applied: 0, credited: 0 });
          book.push(...invoicePostings(happens.bill, kindsTaxed));
        } else if (happens.does === 'pay') {
          const amount =
            happens.kind === 'refund' ? Math.min(happens.amount, unapplied) : happens.amount;
          unapplied += happens.kind === 'refund' ? -amount : amount;
          book.push(...paymentPostings({ ...happens, amount }));
        } else if (happens.does === 'apply') {
          const first = invoices.find((invoice) => openOf(invoice) > 0);
          if (first === undefined) continue;
          const amount = Math.min(happens.amount, unapplied, openOf(first));
          first.applied += amount;
          unapplied -= amount;
          book.push(...applicationPostings(amount));
        } else {
          const invoice = invoices[happens.which % Math.max(1, invoices.length)];
          if (invoice === undefined || invoice.credited > 0) continue;
          book.push(...creditNotePostings(invoice.bill, kindsTaxed));
          invoice.credited = invoice.bill.totals.total;
          book.push(...applicationPostings(-invoice.applied));
          unapplied += invoice.applied;
          invoice.applied = 0;
        }
      }
      const of = (name: string) =>
        balances(book).find(({ account }) => account.name === name)?.balance ?? 0;
      expect(of(RECEIVABLE.name)).toBe(sumMinor(invoices.map(openOf)));
      expect(of(DEPOSITS.name)).toBe(unapplied === 0 ? 0 : -unapplied);
      expect(sumMinor(balances(book).map(({ balance }) => balance))).toBe(0);
    }),
  );
});
