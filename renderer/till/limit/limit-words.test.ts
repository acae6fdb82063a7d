import { expect, test } from 'vitest';
import { JobId, jobCode } from '../../../shared/contract/ids.ts';
import type { BillAhead } from '../../../shared/contract/till/index.ts';
import { stoppedWords, whatToSay } from './limit-words.ts';

const money = (minor: number) => `$${(minor / 100).toFixed(2)}`;
const line = (description: string, amount: number): BillAhead['beyond'][number]['line'] => ({
  kind: 'part',
  description,
  partId: null,
  partNumber: '',
  quantity: 1_000,
  unit: 'pc',
  unitPrice: amount,
  unitCost: null,
  priceFrom: 'typed',
  workKind: '',
  note: '',
  discount: null,
  discounted: 0,
  amount,
});
const AHEAD: BillAhead = {
  jobId: JobId.parse('01900000-0000-7000-8000-000000000001'),
  jobCode: jobCode(42),
  total: 22_000,
  unpriced: [],
  approved: 16_000,
  limit: 16_000,
  over: 6_000,
  stopped: true,
  estimate: null,
  beyond: [{ because: 'decided', line: line('Piston', 6_000), priceToSet: false, held: 0 }],
};

test('says what it comes to, what is approved, and by how much that is passed', () => {
  expect(stoppedWords(AHEAD, money)).toBe(
    'The bill is heading to $220.00, and $160.00 is approved: $60.00 too much',
  );
  expect(stoppedWords({ ...AHEAD, approved: 0, limit: 0, over: 22_000 }, money)).toContain(
    'nothing is approved',
  );
  const estimate = { number: 'E-1', option: '', total: 22_000, approved: false };
  expect(
    stoppedWords({ ...AHEAD, estimate, beyond: [], approved: 0, limit: 0, over: 22_000 }, money),
  ).toBe('The estimate is not approved yet: the bill would come to $220.00');
  expect(stoppedWords({ ...AHEAD, limit: 17_000, over: 5_000 }, money)).toContain(
    '$160.00 is approved and $170.00 let pass: $50.00 too much',
  );
});

test('does not pretend to know a price that is to be set', () => {
  const [first] = AHEAD.beyond;
  const unknown = {
    ...AHEAD,
    unpriced: ['Piston'],
    beyond: first ? [{ ...first, priceToSet: true }] : [],
  };
  expect(stoppedWords(unknown, money)).toBe(
    'The bill is heading to at least $220.00, and $160.00 is approved: at least $60.00 too much; 1 line has no price',
  );
  const said = whatToSay(unknown, { machine: 'tiller', shopName: 'Millbrook' }, money);
  expect(said).toContain('- Piston: price to be set');
  expect(said).toContain('All of it comes to at least $220.00');
});

test('reads the options out where the customer has to choose', () => {
  const options = [
    { label: 'Repair', totals: { total: 9_000 } },
    { label: 'Rebuild', totals: { total: 18_500 } },
  ];
  const facts = { machine: 'tiller', shopName: 'Millbrook', options };
  expect(whatToSay({ ...AHEAD, approved: 0, beyond: [] }, facts, money)).toContain(
    '- Repair: $90.00\n- Rebuild: $185.00\nWhich do you take',
  );
});

test('tells the customer why, how much, and asks up to what amount', () => {
  expect(whatToSay(AHEAD, { machine: 'tiller', shopName: 'Millbrook' }, money)).toBe(
    [
      'Millbrook, about your tiller:',
      'We found more that it needs, before tax:',
      '- Piston: $60.00',
      'All of it comes to $220.00; you approved up to $160.00.',
      'We go on once you say yes. Up to what amount may the bill come?',
    ].join('\n'),
  );
});
