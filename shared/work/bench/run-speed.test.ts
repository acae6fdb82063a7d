import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeSpeeds, speedWords } from './run-speed.ts';

const TACHOMETER = {
  name: 'Tachometer N1',
  unit: 'rpm',
  rangeLow: 100,
  rangeHigh: 20_000,
  uncertainty: 12,
  expired: false,
  calibrationDue: null,
  foundBadOn: null,
} as const;
const TOP = { feature: 'top-speed', specificationId: 's', low: 3500, high: 3700 } as const;

const judged = (topSpeed: number, tachometer: typeof TACHOMETER | null = TACHOMETER) => {
  const [found] = judgeSpeeds({ idleSpeed: null, topSpeed }, [TOP], tachometer);
  if (found === undefined) throw new Error('It was not judged.');
  return found;
};
const plain = (words: string) => words.replaceAll('\u00a0', ' ');

describe('a speed in the test run', () => {
  // ISO 14253-1: the uncertainty is taken off at each limit; by hand.
  it.each([
    [3600, 'within'],
    [3688, 'within'],
    [3690, 'too-close'],
    [3710, 'too-close'],
    [3713, 'outside'],
    [3487, 'outside'],
  ] as const)('of %d between 3500 and 3700, good to 12, is %s', (speed, verdict) => {
    expect(judged(speed).verdict).toBe(verdict);
  });

  it('is never within once the band shrunk by the uncertainty is left', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3400, max: 3800 }), (speed) => {
        const inside = speed >= 3512 && speed <= 3688;
        expect(judged(speed).verdict === 'within').toBe(inside);
      }),
    );
  });

  it('says what it was held against, with what, and what is wrong with that', () => {
    expect(plain(speedWords(judged(3690)))).toBe(
      '3690 rpm, too close to call: 3500 to 3700 rpm (Tachometer N1, ±12)',
    );
    expect(plain(speedWords(judged(3600, null)))).toBe(
      '3600 rpm, within 3500 to 3700 rpm (no gauge named)',
    );
    const [unknown] = judgeSpeeds({ idleSpeed: 1750, topSpeed: null }, [TOP], null);
    expect(unknown).toMatchObject({ verdict: 'no-band', specificationId: null });
    expect(unknown && plain(speedWords(unknown))).toBe('1750 rpm');
  });
});
