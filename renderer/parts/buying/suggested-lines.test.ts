import { expect, test } from 'vitest';
import { JobId, PartId } from '../../../shared/contract/ids.ts';
import type { Suggestion } from '../../../shared/contract/parts/index.ts';
import { suggestedLines, whySuggested } from './suggested-lines.ts';

const id = (last: number) => `0198c1a0-0000-7000-8000-00000000000${last}`;
const job = (last: number, missing: number, onOrder = 0) => ({
  jobId: JobId.parse(id(last)),
  jobCode: `J00000${last}`,
  missing,
  onOrder,
});

const piston: Suggestion = {
  part: {
    id: PartId.parse(id(9)),
    number: 'OS 1',
    description: 'Piston',
    unit: 'pc',
    onHand: 0,
    bin: '',
  },
  supplierNumber: 'AW 1',
  packSize: 5_000,
  unitCost: 100,
  available: 0,
  onOrder: 1_000,
  missing: 4_000,
  position: -3_000,
  typedPoint: 0,
  usage: null,
  point: 0,
  jobs: [job(1, 3_000, 1_000), job(2, 1_000)],
  special: true,
  quantity: 5_000,
  amount: 500,
};

const shares = (suggestion: Suggestion, quantity: number) =>
  suggestedLines(suggestion, quantity).map((line) => [line.jobCode, line.quantity]);

test('what is not kept is ordered for its jobs, and the rest of a pack goes to the shelf', () => {
  expect(shares(piston, 5_000)).toEqual([
    ['J000001', 2_000],
    ['J000002', 1_000],
    ['', 2_000],
  ]);
  expect(shares(piston, 2_000)).toEqual([['J000001', 2_000]]);
  expect(shares({ ...piston, special: false }, 5_000)).toEqual([['', 5_000]]);
});

test('the reasons have their figures', () => {
  const amount = (thousandths: number, unit: string) => `${thousandths / 1000} ${unit}`;
  expect(whySuggested(piston, amount)).toEqual([
    'J000001 misses 3 pc, 1 pc on order',
    'J000002 misses 1 pc',
  ]);
  expect(whySuggested({ ...piston, jobs: [], point: 3_000, typedPoint: 2_000 }, amount)).toEqual([
    'Reorder at 3 pc by usage; 2 pc is typed on the part',
  ]);
  const usage = {
    weeks: 35,
    used: 2_000,
    perWeek: 57,
    spread: 236,
    leadDays: 9,
    duringLead: 73,
    safety: 441,
    point: 1_000,
    economicOrder: null,
  };
  expect(whySuggested({ ...piston, jobs: [], usage }, amount)).toEqual([
    'Used 2 pc in 35 weeks: 0.1 pc in 9 days + 0.4 pc for safety, up to 1 pc',
  ]);
});
