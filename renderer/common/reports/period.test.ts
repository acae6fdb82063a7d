import { expect, test } from 'vitest';
import { periodAround, usualPeriod } from './period.ts';

test.each([
  ['this-month', '2028-02-10', '2028-02-01', '2028-02-29'],
  ['last-month', '2026-03-31', '2026-02-01', '2026-02-28'],
  ['last-month', '2026-01-05', '2025-12-01', '2025-12-31'],
  ['this-quarter', '2026-11-25', '2026-10-01', '2026-12-31'],
  ['last-quarter', '2026-02-01', '2025-10-01', '2025-12-31'],
  ['this-year', '2026-11-25', '2026-01-01', '2026-12-31'],
  ['last-year', '2026-11-25', '2025-01-01', '2025-12-31'],
] as const)('%s seen from %s', (usual, today, from, to) => {
  expect(periodAround(usual, today)).toEqual({ from, to });
  expect(usualPeriod({ from, to }, today)).toBe(usual);
});

test('any other period has no name', () => {
  expect(usualPeriod({ from: '2026-11-02', to: '2026-11-25' }, '2026-11-25')).toBeUndefined();
});
