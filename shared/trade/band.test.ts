import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aim } from './band.ts';

const limit = fc.double({ min: -1e6, max: 1e6, noNaN: true });

describe('aim', () => {
  it('is the middle, as a person would write it', () => {
    expect(aim({ low: 0.2, high: 0.4 })).toBe(0.3);
    expect(aim({ low: 0.1, high: 0.2 })).toBe(0.15);
    expect(aim({ low: -0.02, high: 0.02 })).toBe(0);
  });

  it('is what the source states where it states one', () => {
    expect(aim({ low: 0.2, high: 0.4, aim: 0.25 })).toBe(0.25);
    expect(aim({ high: 0.4, aim: 0.25 })).toBe(0.25);
    expect(aim({ low: 0.2, high: 0.4, aim: 0.2 })).toBe(0.2);
  });

  it('lies inside its band', () => {
    fc.assert(
      fc.property(limit, limit, (a, b) => {
        const low = Math.min(a, b);
        const high = Math.max(a, b);
        const middle = aim({ low, high });
        expect(middle >= low && middle <= high).toBe(true);
      }),
    );
  });

  it('refuses a band without sense', () => {
    expect(() => aim({ low: 0.4, high: 0.2 })).toThrow('above the high limit');
    expect(() => aim({ low: 0.2, high: 0.4, aim: 0.5 })).toThrow('outside its own band');
    expect(() => aim({ low: 0.2, high: 0.4, aim: 0.1 })).toThrow(RangeError);
    expect(() => aim({ low: 0.2 })).toThrow('no middle');
    expect(() => aim({})).toThrow(RangeError);
    expect(() => aim({ low: Number.NaN, high: 1 })).toThrow(RangeError);
    expect(() => aim({ low: 0, high: Number.POSITIVE_INFINITY })).toThrow(RangeError);
    expect(() => aim({ low: 0, high: 1, aim: Number.NaN })).toThrow(RangeError);
  });
});
