import { expect, test } from 'vitest';
import type { Proposal } from '../../shared/contract/bench/index.ts';
import { PartId } from '../../shared/contract/ids.ts';
import { emptyLine, type MoneyRules, readLine } from '../till/lines/draft-line.ts';
import { missingFrom, withProposals } from './with-proposals.ts';

const rules: MoneyRules = {
  currency: 'USD',
  locale: 'en-US',
  rounding: 'half-up',
  labourRate: 8500,
  labourRates: [],
  labourCost: null,
  outsideMarkupPpm: 0,
  supplies: null,
};

const proposal = (more: Partial<Proposal>): Proposal => ({
  kind: 'outside',
  description: 'Bore and hone cylinder 1 +0.25 mm',
  partId: null,
  partNumber: '',
  quantity: 1000,
  unit: 'pc',
  unitPrice: 0,
  priceToSet: true,
  unitCost: null,
  priceFrom: 'typed',
  note: '',
  ...more,
});

const piston = proposal({
  kind: 'part',
  description: 'Piston, 0.25 oversize',
  partId: PartId.parse('01900000-0000-7000-8000-000000000001'),
  partNumber: 'HV 25',
  quantity: 2000,
  unitPrice: 7200,
  priceToSet: false,
});

test('an untouched estimate gets the proposals alone, and a price to be set stays wanted', () => {
  const lines = withProposals([emptyLine([], 'labour', rules)], [proposal({}), piston], rules);
  expect(lines.map(({ key }) => key)).toEqual([1, 2]);
  const [bore, part] = lines.map((line) => readLine(line, rules));
  expect(bore?.line).toBeNull();
  expect(bore?.problems).toHaveProperty('unitPrice');
  expect(part).toMatchObject({ line: { partId: piston.partId, quantity: 2000 }, amount: 14_400 });
});

test('what the estimate has already is not put there twice', () => {
  const once = withProposals([], [proposal({}), piston], rules);
  const renamed = once.map((line) =>
    line.partId === null ? line : { ...line, description: 'Piston and pin' },
  );
  expect(missingFrom(renamed, [proposal({}), piston])).toEqual([]);
  expect(withProposals(renamed, [proposal({}), piston], rules)).toEqual(renamed);
});
