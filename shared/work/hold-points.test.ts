import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type HoldPointEvent,
  holdPointState,
  holdPointsOf,
  missingReadings,
  openHoldPoints,
} from './hold-points.ts';

describe('hold points', () => {
  test('a two-stroke has no valves to set and no sump to fill, and mixes its fuel', () => {
    const keys = holdPointsOf('two-stroke').map(({ key }) => key);
    expect(keys).not.toEqual(expect.arrayContaining(['valve-lash']));
    expect(keys).not.toContain('oil');
    expect(keys).toContain('fuel-mix');
    expect(holdPointsOf('four-stroke').map(({ key }) => key)).not.toContain('fuel-mix');
  });

  test('the test run comes last and no key stands twice', () => {
    for (const cycle of ['four-stroke', 'two-stroke'] as const) {
      const keys = holdPointsOf(cycle).map(({ key }) => key);
      expect(keys.at(-1)).toBe('test-run');
      expect(new Set(keys).size).toBe(keys.length);
    }
  });

  test('the last event decides, whatever came before', () => {
    const outcome = fc.constantFrom('passed', 'overridden', 'reopened');
    fc.assert(
      fc.property(fc.array(outcome, { minLength: 1 }), (outcomes) => {
        const events = outcomes.map((each) => ({ key: 'oil', outcome: each }) as HoldPointEvent);
        const last = outcomes.at(-1);
        expect(holdPointState('oil', events)).toBe(last === 'reopened' ? 'open' : last);
      }),
    );
  });

  test('all are open at first; one passed is one fewer', () => {
    const all = holdPointsOf('four-stroke').length;
    expect(openHoldPoints('four-stroke', [])).toHaveLength(all);
    expect(openHoldPoints('four-stroke', [{ key: 'oil', outcome: 'passed' }])).toHaveLength(
      all - 1,
    );
  });

  test('a point names the readings that it lacks', () => {
    const lash = holdPointsOf('four-stroke').find(({ key }) => key === 'valve-lash');
    if (lash === undefined) throw new Error('There is no such point.');
    expect(missingReadings(lash, new Set(['valve-lash-intake']))).toEqual(['valve-lash-exhaust']);
  });
});
