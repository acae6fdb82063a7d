import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COMMON_OVERSIZES, machineTo, nextOversize, nextUndersize } from './decision-sizes.ts';

describe('machineTo', () => {
  it('moves the band of a new part by the step, without rounding dust', () => {
    expect(machineTo({ low: 81, high: 81.02 }, 0.25)).toEqual({ low: 81.25, high: 81.27 });
    expect(machineTo({ low: 33.95, high: 33.966 }, -0.25)).toEqual({ low: 33.7, high: 33.716 });
  });

  it('knows no size where the band lacks a side', () => {
    expect(machineTo({ low: null, high: 81.02 }, 0.25)).toBeNull();
  });
});

describe('nextOversize', () => {
  it('leaves the stock to take off, on the limit too', () => {
    expect(nextOversize([81.2], 81, COMMON_OVERSIZES, 0.05)).toBe(0.25);
    expect(nextOversize([81.201], 81, COMMON_OVERSIZES, 0.05)).toBe(0.5);
    expect(nextOversize([81.96], 81, COMMON_OVERSIZES, 0.05)).toBeNull();
  });

  it('is the smallest step that cleans up, whatever was read', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 80_000, max: 82_500 }), { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 0, max: 100 }),
        (micrometres, stock) => {
          const step = nextOversize(
            micrometres.map((value) => value / 1000),
            81,
            COMMON_OVERSIZES,
            stock / 1000,
          );
          const needed = Math.max(...micrometres) + stock;
          const fits = COMMON_OVERSIZES.filter((each) => 81_000 + each * 1000 >= needed);
          expect(step).toBe(fits[0] ?? null);
        },
      ),
    );
  });
});

describe('nextUndersize', () => {
  it('leaves the stock to take off, on the limit too', () => {
    expect(nextUndersize([33.766, 33.9], 33.966, [0.5, 0.25], 0.05)).toBe(0.25);
    expect(nextUndersize([33.765], 33.966, [0.25, 0.5], 0.05)).toBe(0.5);
    expect(nextUndersize([33.4], 33.966, [0.25, 0.5], 0.05)).toBeNull();
  });
});
