import { expect, test } from 'vitest';
import type { JobState } from '../../shared/work/counter/job-state.ts';
import { daysLate } from './days-late.ts';

const late = (promisedFor: string | null, state: JobState) =>
  daysLate({ promisedFor, state }, '2026-03-01');

test('a job is late from the day after the one promised', () => {
  expect(late('2026-03-01', 'on-the-bench')).toBe(0);
  expect(late('2026-02-27', 'on-the-bench')).toBe(2);
  expect(late('2026-03-09', 'diagnosis')).toBe(0);
});

test('a job without a date, or no longer owed by one, is never late', () => {
  expect(late(null, 'taken-in')).toBe(0);
  for (const state of ['ready', 'stopped', 'handed-over'] as const)
    expect(late('2025-12-01', state), state).toBe(0);
});
