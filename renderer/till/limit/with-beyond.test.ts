import { expect, test } from 'vitest';
import { PartId } from '../../../shared/contract/ids.ts';
import { Line } from '../../../shared/contract/till/index.ts';
import { draftOf, type MoneyRules } from '../lines/draft-line.ts';
import { missingBeyond, withBeyond } from './with-beyond.ts';

const PLUG = PartId.parse('01890000-0000-7000-8000-000000000001');
const RULES: MoneyRules = {
  currency: 'EUR',
  locale: 'de-DE',
  rounding: 'half-up',
  labourRate: 8_000,
  labourRates: [],
  labourCost: null,
  outsideMarkupPpm: 0,
  supplies: null,
};
const line = (kind: Line['kind'], quantity: number, partId: PartId | null = null): Line =>
  Line.parse({
    kind,
    description: kind === 'part' ? 'Spark plug' : 'Core charge, plug',
    partId,
    partNumber: '',
    quantity,
    unit: 'pc',
    unitPrice: 500,
    unitCost: null,
    amount: (500 * quantity) / 1000,
  });
const beyond = (of: Line, held: number) =>
  ({ because: 'issued', line: of, priceToSet: false, held }) as const;

test('as much as is estimated already, and as much again, is still missing', () => {
  const draft = draftOf([line('part', 1_500, PLUG)], RULES);
  const more = [beyond(line('part', 1_500, PLUG), 1_500)];
  expect(missingBeyond(draft, more, RULES)).toEqual(more);
  const put = withBeyond(draft, more, RULES);
  expect(put.map(({ quantity }) => quantity)).toEqual(['1,5', '1,5']);
  expect(missingBeyond(put, more, RULES)).toEqual([]);
  // Typed into the one line it is as good.
  const typed = draft.map((each) => ({ ...each, quantity: '3' }));
  expect(missingBeyond(typed, more, RULES)).toEqual([]);
});

test('a core charge is not its part, nor the part its charge', () => {
  const more = [beyond(line('part', 1_000, PLUG), 0), beyond(line('core-charge', 1_000), 0)];
  const draft = draftOf([line('part', 1_000, PLUG)], RULES);
  expect(missingBeyond(draft, more, RULES)).toEqual([more[1]]);
  expect(missingBeyond(withBeyond(draft, more, RULES), more, RULES)).toEqual([]);
});
