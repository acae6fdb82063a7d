import { describe, expect, it } from 'vitest';
import { runStanding } from './run-step.ts';

const run = (passed: boolean, at: string) => ({ passed, at });
const EIGHT = '2026-03-02T08:00:00Z';
const NINE = '2026-03-02T09:00:00Z';
const TEN = '2026-03-02T10:00:00Z';

describe('a step that a test run passes', () => {
  it('goes by the latest run, and by none from before it was reopened', () => {
    expect(runStanding([], null)).toBe('not-run');
    expect(runStanding([run(true, EIGHT)], null)).toBe('passed');
    expect(runStanding([run(false, NINE), run(true, EIGHT)], null)).toBe('not-passed');
    expect(runStanding([run(true, EIGHT)], NINE)).toBe('before-reopening');
    expect(runStanding([run(true, TEN), run(true, EIGHT)], NINE)).toBe('passed');
    expect(runStanding([run(false, TEN), run(true, EIGHT)], NINE)).toBe('not-passed');
  });
});
