import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judge } from './judge.ts';

const band = { low: 9, high: 11 };

describe('judge', () => {
  it('is within only inside the band less the uncertainty, limits included', () => {
    expect(judge({ value: 10, ...band, uncertainty: 0.2 }).verdict).toBe('within');
    expect(judge({ value: 9.2, ...band, uncertainty: 0.2 }).verdict).toBe('within');
    expect(judge({ value: 10.8, ...band, uncertainty: 0.2 }).verdict).toBe('within');
    expect(judge({ value: 0.2, high: 0.3, uncertainty: 0.1 }).verdict).toBe('within');
    expect(judge({ value: 10.81, ...band, uncertainty: 0.2 }).verdict).toBe('too-close');
  });

  it('is outside only beyond the band and the uncertainty', () => {
    expect(judge({ value: 11.2, ...band, uncertainty: 0.2 }).verdict).toBe('too-close');
    expect(judge({ value: 11.21, ...band, uncertainty: 0.2 }).verdict).toBe('outside');
    expect(judge({ value: 8.8, ...band, uncertainty: 0.2 }).verdict).toBe('too-close');
    expect(judge({ value: 8.79, ...band, uncertainty: 0.2 }).verdict).toBe('outside');
    expect(judge({ value: 0.4, high: 0.3, uncertainty: 0.1 }).verdict).toBe('too-close');
  });

  it('calls 0.002 inside the limit with a gauge good to 0.01 too close', () => {
    expect(judge({ value: 68.098, high: 68.1, uncertainty: 0.01 }).verdict).toBe('too-close');
  });

  it('is sure of itself without uncertainty', () => {
    expect(judge({ value: 11, ...band, uncertainty: 0 })).toEqual({
      verdict: 'within',
      conformance: 1,
    });
    expect(judge({ value: 11.0001, ...band, uncertainty: 0 })).toEqual({
      verdict: 'outside',
      conformance: 0,
    });
    expect(judge({ value: 0.3, low: 0.1 + 0.2, uncertainty: 0 }).verdict).toBe('within');
  });

  it('holds at the ends of what a number can be', () => {
    const tiny = { value: 5, high: 5, uncertainty: Number.MIN_VALUE };
    expect(judge(tiny)).toEqual({ verdict: 'within', conformance: 0.5 });
    expect(judge({ ...tiny, value: 4, low: 3 })).toEqual({ verdict: 'within', conformance: 1 });
    expect(judge({ ...tiny, value: 6 })).toEqual({ verdict: 'outside', conformance: 0 });
  });

  it('never finds a part within a band narrower than twice the uncertainty', () => {
    expect(judge({ value: 10, low: 9.9, high: 10.1, uncertainty: 0.2 }).verdict).toBe('too-close');
  });

  it('gives half the probability on a single limit', () => {
    expect(judge({ value: 5, high: 5, uncertainty: 0.1 }).conformance).toBe(0.5);
    expect(judge({ value: 5, low: 5, uncertainty: 0.1 }).conformance).toBe(0.5);
  });

  const length = fc.double({ min: -100, max: 100, noNaN: true });
  const uncertainty = fc.double({ min: 1e-3, max: 10, noNaN: true });

  it('agrees with its own probability: within at 95.4 % and more, outside at 2.3 % and less', () => {
    fc.assert(
      fc.property(length, length, length, uncertainty, (value, a, b, expanded) => {
        const { verdict, conformance } = judge({
          value,
          low: Math.min(a, b),
          high: Math.max(a, b),
          uncertainty: expanded,
        });
        expect(conformance).toBeGreaterThanOrEqual(0);
        expect(conformance).toBeLessThanOrEqual(1);
        if (verdict === 'within') {
          expect(conformance).toBeGreaterThan(0.954);
        }
        if (verdict === 'outside') {
          expect(conformance).toBeLessThan(0.0228);
        }
      }),
    );
  });

  it('judges the same in the mirror', () => {
    fc.assert(
      fc.property(length, length, uncertainty, (value, limit, expanded) => {
        const upper = judge({ value, high: limit, uncertainty: expanded });
        const lower = judge({ value: -value, low: -limit, uncertainty: expanded });
        expect(lower).toEqual(upper);
      }),
    );
  });

  it('refuses what makes no sense', () => {
    expect(() => judge({ value: 1, uncertainty: 0.1 })).toThrow('nothing to judge by');
    expect(() => judge({ value: 1, low: 2, high: 1, uncertainty: 0.1 })).toThrow(RangeError);
    expect(() => judge({ value: 1, high: 1, uncertainty: -0.1 })).toThrow(RangeError);
    expect(() => judge({ value: Number.NaN, high: 1, uncertainty: 0.1 })).toThrow(RangeError);
    expect(() => judge({ value: 1, high: 1, uncertainty: Number.NaN })).toThrow(RangeError);
    expect(() => judge({ value: 1, high: Number.POSITIVE_INFINITY, uncertainty: 0 })).toThrow(
      RangeError,
    );
  });
});
