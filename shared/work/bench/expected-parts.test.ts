import { expect, test } from 'vitest';
import { expectedParts } from './expected-parts.ts';

const order = (quantity: number, expectedOn: string | null, jobId: string | null = null) => ({
  quantity,
  expectedOn,
  jobId,
});

test('the slowest line that is needed says the day, and who comes first is served first', () => {
  const expected = expectedParts(
    [
      { jobId: 'a', missing: 3 },
      { jobId: 'b', missing: 1 },
    ],
    [order(2, '2026-12-10'), order(2, '2026-12-03')],
  );
  expect(expected.get('a')).toEqual({ onOrder: 3, expectedOn: '2026-12-10' });
  expect(expected.get('b')).toEqual({ onOrder: 1, expectedOn: '2026-12-10' });
});

test('what was ordered for a job goes to that job, whoever comes first', () => {
  const expected = expectedParts(
    [
      { jobId: 'a', missing: 1 },
      { jobId: 'b', missing: 1 },
    ],
    [order(1, '2026-12-01', 'b')],
  );
  expect(expected.get('a')).toEqual({ onOrder: 0, expectedOn: null });
  expect(expected.get('b')).toEqual({ onOrder: 1, expectedOn: '2026-12-01' });
});

test('nobody knows the day when not all is on order or a line that is needed has none', () => {
  const wanted = [{ jobId: 'a', missing: 2 }];
  expect(expectedParts(wanted, [order(1, '2026-12-01')]).get('a')).toEqual({
    onOrder: 1,
    expectedOn: null,
  });
  const undated = [order(1, null), order(1, '2026-12-01')];
  expect(expectedParts(wanted, undated).get('a')?.expectedOn).toBeNull();
  expect(expectedParts([{ jobId: 'a', missing: 1 }], undated).get('a')?.expectedOn).toBe(
    '2026-12-01',
  );
});
