import { describe, expect, test } from 'vitest';
import { BundleId, PartId } from '../../../shared/contract/ids.ts';
import type { BillTerms } from '../../../shared/contract/till/index.ts';
import {
  markupOf,
  withBundle,
  withCore,
  withCoreBack,
  withCost,
  withMarkup,
  withUnitPrice,
  withWorkKind,
} from './change-line.ts';
import { readDiscount, writeDiscount } from './discount-text.ts';
import { type DraftLine, emptyLine, type MoneyRules, withKind, withPart } from './draft-line.ts';
import { drawDraft } from './draw-draft.ts';

const RULES: MoneyRules = {
  currency: 'USD',
  locale: 'en-US',
  rounding: 'half-up',
  labourRate: 8_500,
  labourRates: [{ name: 'Machining', rate: 11_000 }],
  labourCost: 3_800,
  outsideMarkupPpm: 250_000,
  supplies: { ppm: 50_000, kinds: ['labour', 'part'], cap: 1_000 },
};
const TERMS: BillTerms = {
  rounding: 'half-up',
  taxBasis: 'invoice',
  taxes: [{ name: 'State', ratePpm: 62_500, kinds: ['part', 'supplies'] }],
  pricesIncludeTax: false,
  exemptBy: '',
  takenOut: [],
  validUntil: null,
  supplies: RULES.supplies,
};
const STARTER = {
  id: PartId.parse('019ac5f0-7c1e-7a00-8000-000000000001'),
  number: 'ST-9',
  description: 'Starter',
  unit: 'pc',
  cost: 6_000,
  coreCharge: 2_500,
  sellsAt: 9_000,
  sellsBy: 'cost-and-markup' as const,
};
const line = (kind: DraftLine['kind'], change: Partial<DraftLine> = {}): DraftLine => ({
  ...emptyLine([], kind, RULES),
  description: 'Something',
  ...change,
});

test('labour takes the rate of its kind of work, until somebody types another', () => {
  const machining = withWorkKind(line('labour'), 'Machining', RULES);
  expect(machining).toMatchObject({
    unitPrice: '110.00',
    behind: { workKind: 'Machining', priceFrom: 'labour-rate', unitCost: 3_800 },
  });
  expect(withUnitPrice(machining, '99').behind).toMatchObject({ priceFrom: 'typed' });
  expect(withWorkKind(machining, '', RULES)).toMatchObject({ unitPrice: '85.00' });
});

test('outside work takes the markup on what it costs, and keeps a price that was typed', () => {
  const costed = withCost(line('outside'), 6_000, RULES);
  expect(costed).toMatchObject({ unitPrice: '75.00', behind: { priceFrom: 'cost-and-markup' } });
  expect(markupOf(costed, RULES)).toBe(250_000);
  expect(withMarkup(costed, 1_000_000, RULES).unitPrice).toBe('120.00');
  const typed = withCost(withUnitPrice(line('outside'), '50'), 6_000, RULES);
  expect(typed.unitPrice).toBe('50');
  expect(markupOf(typed, RULES)).toBeNull();
});

test('a part with a core brings its charge, and the credit when it comes back', () => {
  const part = withPart(line('part'), STARTER, RULES);
  const charged = withCore([part, line('fee', { key: 7 })], part.key, STARTER, RULES);
  expect(charged.map(({ kind }) => kind)).toEqual(['part', 'core-charge', 'fee']);
  const back = withCoreBack(charged, charged[1] ?? part);
  expect(new Set(back.map(({ key }) => key)).size).toBe(4);
  const { totals, margin } = drawDraft({ lines: back, discount: null }, RULES, TERMS);
  expect(back[2]).toMatchObject({
    kind: 'core-credit',
    description: 'Core came back, Starter ST-9',
  });
  expect(totals.subtotal).toBe(9_000);
  expect(margin).toMatchObject({ sales: 9_000, cost: 6_000, margin: 3_000 });
});

test('supplies go by the shop’s rule, up to its cap, and are sent at what they come to', () => {
  const supplies = withKind(emptyLine([], 'labour', RULES), 'supplies', RULES);
  expect(supplies).toMatchObject({ description: 'Shop supplies', unitPrice: '' });
  const labour = line('labour', { key: 2, quantity: '1' });
  const few = drawDraft({ lines: [supplies, labour], discount: null }, RULES, TERMS);
  expect(few.ready?.map(({ unitPrice }) => unitPrice)).toEqual([425, 8_500]);
  const many = drawDraft(
    { lines: [supplies, { ...labour, quantity: '10' }], discount: null },
    RULES,
    TERMS,
  );
  expect(many.readings[0]).toMatchObject({ amount: 1_000 });
});

test('a line that can’t be read is left out of the figures and keeps all from being sent', () => {
  const drawn = drawDraft(
    {
      lines: [line('part', { unitPrice: '10' }), line('part', { key: 2, unitPrice: 'x' })],
      discount: null,
    },
    RULES,
    TERMS,
  );
  expect(drawn).toMatchObject({ ready: null, uncounted: 1, filled: 2, totals: { total: 1_063 } });
});

test('a line without a price is told apart from one that can’t be read', () => {
  const lines = [
    line('part', { unitPrice: '10' }),
    line('part', { key: 2, unitPrice: '', description: 'Bore to +0.25' }),
  ];
  const drawn = drawDraft({ lines, discount: null }, RULES, TERMS);
  expect(drawn).toMatchObject({ ready: null, unpriced: 1, uncounted: 0, totals: { total: 1_063 } });
});

test('a bundle’s lines go below those that are filled in', () => {
  const bundle = {
    id: BundleId.parse('019ac5f0-7c1e-7a00-8000-000000000002'),
    name: 'Valve job',
    note: '',
    hours: 2_500,
    lines: [
      {
        kind: 'labour' as const,
        description: 'Cut seats',
        partId: null,
        partNumber: '',
        quantity: 2_500,
        unit: 'h',
        unitPrice: 11_000,
        unitCost: null,
        priceFrom: 'labour-rate' as const,
        workKind: 'Machining',
        note: '',
        discount: null,
      },
    ],
  };
  const filled = line('fee', { key: 3, unitPrice: '5' });
  const lines = withBundle([emptyLine([], 'labour', RULES), filled], bundle, RULES);
  expect(lines.map(({ key, description }) => [key, description])).toEqual([
    [3, 'Something'],
    [4, 'Cut seats'],
  ]);
});

describe('a discount as typed', () => {
  test('is a share or an amount, and is written back as it was', () => {
    expect(readDiscount('12,5 %', RULES)).toEqual({ by: 'share', ppm: 125_000 });
    expect(readDiscount('10%', RULES)).toEqual({ by: 'share', ppm: 100_000 });
    expect(readDiscount('12.50', RULES)).toEqual({ by: 'amount', amount: 1_250 });
    expect(readDiscount(' ', RULES)).toBeNull();
    expect(writeDiscount({ by: 'share', ppm: 125_000 }, RULES)).toBe('12.5 %');
    expect(writeDiscount({ by: 'amount', amount: 1_250 }, RULES)).toBe('12.50');
  });

  test.each(['101 %', '0 %', '0', 'ten', '1.234'])('%s is refused', (typed) => {
    expect(() => readDiscount(typed, RULES)).toThrow(RangeError);
  });
});
