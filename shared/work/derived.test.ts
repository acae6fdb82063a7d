import { describe, expect, test } from 'vitest';
import { derivedFrom, type StandingReading } from './derived.ts';

const reading = (
  feature: StandingReading['feature'],
  place: string,
  value: number,
  more: Partial<StandingReading> = {},
): StandingReading => ({
  feature,
  place,
  cylinder: 1,
  phase: 'final',
  value,
  uncertainty: 0.006,
  ...more,
});

const named = (readings: StandingReading[]) =>
  new Map(derivedFrom(readings).map((value) => [value.feature, value]));

describe('derived values', () => {
  test('the tightest spot decides a clearance, and its uncertainty is the root of squares', () => {
    const values = named([
      reading('bore', 'c1-top-along', 68.03),
      reading('bore', 'c1-bottom-along', 68.01),
      reading('piston-skirt', 'c1-only', 67.95, { uncertainty: 0.008 }),
    ]);
    expect(values.get('piston-clearance')).toMatchObject({
      value: expect.closeTo(0.06, 9),
      uncertainty: expect.closeTo(0.01, 9),
    });
    expect(values.get('bore-taper')?.value).toBeCloseTo(0.02, 9);
  });

  test('one reading gives no taper and no out-of-round: a nought would look like a finding', () => {
    expect(named([reading('bore', 'c1-top-along', 68.03)]).size).toBe(0);
    expect([
      ...named([
        reading('bore', 'c1-top-along', 68.03),
        reading('bore', 'c1-top-across', 68.05),
      ]).keys(),
    ]).toEqual(['bore-out-of-round']);
  });

  test('cylinders and phases are kept apart', () => {
    const values = derivedFrom([
      reading('rod-big-end', 'c1-only', 30.04),
      reading('crankpin', 'c1-first', 30),
      reading('crankpin', 'c2-first', 29.98, { cylinder: 2 }),
      reading('rod-big-end', 'c2-only', 30.04, { cylinder: 2, phase: 'as-received' }),
    ]);
    expect(values).toEqual([
      expect.objectContaining({ feature: 'rod-clearance', cylinder: 1, phase: 'final' }),
    ]);
  });
});
