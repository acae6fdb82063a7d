import { expect, test } from 'vitest';
import { PartId } from '../../../shared/contract/ids.ts';
import {
  type DraftLine,
  draftOf,
  emptyLine,
  isBlank,
  type MoneyRules,
  readLine,
  withKind,
  withPart,
} from './draft-line.ts';

const RULES: MoneyRules = {
  currency: 'USD',
  locale: 'en-US',
  rounding: 'half-up',
  labourRate: 8_500,
  labourRates: [],
  labourCost: null,
  outsideMarkupPpm: 0,
  supplies: null,
};
const partId = PartId.parse('019ac5f0-7c1e-7a00-8000-000000000001');
const PART = {
  id: partId,
  number: 'BX-201',
  description: 'Head gasket',
  bin: 'C3',
  unit: 'pc',
  price: 1_250,
  cost: 700,
  priceRule: 'fixed' as const,
  listPrice: null,
  coreCharge: 0,
  sellsAt: 1_250,
  sellsBy: 'shelf-price' as const,
  barcode: '',
  supplier: '',
  packSize: 1_000,
  onHand: 2_000,
  promised: 0,
  onOrder: 0,
  worth: 0,
  reorderPoint: 0,
};
const typed = (change: Partial<DraftLine>): DraftLine => ({
  ...emptyLine([], 'part', RULES),
  description: 'Head gasket',
  unitPrice: '12.50',
  ...change,
});

test('a labour line begins with the hour and the shop’s rate', () => {
  const line = emptyLine([typed({ key: 4 })], 'labour', RULES);
  expect(line).toMatchObject({ key: 5, quantity: '1', unit: 'h', unitPrice: '85.00' });
  expect(isBlank(line, RULES)).toBe(true);
});

test('unit and price follow the kind until somebody types others', () => {
  const labour = emptyLine([], 'labour', RULES);
  expect(withKind(labour, 'fee', RULES)).toMatchObject({ unit: 'pc', unitPrice: '' });
  expect(withKind({ ...labour, unitPrice: '60' }, 'fee', RULES)).toMatchObject({
    unit: 'pc',
    unitPrice: '60',
  });
});

test('a part brings its number, description, unit and price', () => {
  const line = withPart(emptyLine([], 'labour', RULES), PART, RULES);
  expect(readLine(line, RULES)).toMatchObject({
    line: {
      kind: 'part',
      description: 'Head gasket',
      partId,
      quantity: 1_000,
      unit: 'pc',
      unitPrice: 1_250,
      unitCost: 700,
      priceFrom: 'shelf-price',
      workKind: '',
      note: '',
      discount: null,
    },
    amount: 1_250,
    problems: {},
  });
});

test('what can’t be read is named where it stands, and nothing is sent', () => {
  const reading = readLine(typed({ description: ' ', quantity: 'two', unitPrice: '1.234' }), RULES);
  expect(reading.line).toBeNull();
  expect(reading.amount).toBeNull();
  expect(Object.keys(reading.problems).sort()).toEqual(['description', 'quantity', 'unitPrice']);
});

test('a quantity of zero is refused by the contract’s own words', () => {
  expect(readLine(typed({ quantity: '0' }), RULES).problems.quantity).toBe(
    'A quantity is more than zero.',
  );
});

test('an estimate’s lines come back as they were', () => {
  const rules = { ...RULES, currency: 'EUR', locale: 'de-DE' };
  const line = {
    kind: 'labour' as const,
    description: 'Cut valve seats',
    partId: null,
    partNumber: '',
    quantity: 1_125,
    unit: 'h',
    unitPrice: 123_450,
    unitCost: null,
    priceFrom: 'labour-rate' as const,
    workKind: 'Machining',
    note: '',
    discount: null,
    discounted: 0,
    amount: 138_881,
  };
  const [draft] = draftOf([line], rules);
  expect(draft).toMatchObject({ quantity: '1,125', unitPrice: '1234,50' });
  expect(draft && readLine(draft, rules)).toMatchObject({ amount: line.amount, problems: {} });
});
