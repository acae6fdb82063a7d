import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judge } from './judge.ts';
import { meanUncertainty, repeated, settle } from './settle.ts';

const band = { low: 68, high: 68.04 };
const fine = { resolution: 0.001, maxError: 0.002 };
const coarse = { resolution: 0.01, maxError: 0.005 };

describe('what would settle a reading', () => {
  test('a gauge too coarse for the distance: a better one, and how good', () => {
    expect(settle({ value: 68.036, ...band, gauge: coarse })).toMatchObject({
      by: 'better-gauge',
      needed: expect.closeTo(0.004, 9),
    });
  });

  test('scatter that stands in the way: so many readings', () => {
    // Own part 2·√((0.0005² + 0.002²)/3) = 0.00238; scatter of 0.004 has to come under √(0.006² − 0.00238²).
    const settling = settle({ value: 68.034, ...band, gauge: fine, repeatability: 0.004 });
    expect(settling).toMatchObject({ by: 'more-readings', readings: 3 });
  });

  test('more readings than anybody takes: a better gauge', () => {
    expect(settle({ value: 68.0375, ...band, gauge: fine, repeatability: 0.004 })).toMatchObject({
      by: 'better-gauge',
    });
  });

  test('on the limit no gauge tells', () => {
    expect(settle({ value: 68.04, ...band, gauge: fine }).by).toBe('no-gauge');
  });

  test('outside is settled by the same distance', () => {
    expect(settle({ value: 68.06, ...band, gauge: fine }).by).toBe('nothing');
    expect(settle({ value: 68.041, ...band, gauge: coarse })).toMatchObject({
      by: 'better-gauge',
      needed: expect.closeTo(0.001, 9),
    });
  });

  test('what makes no sense is refused', () => {
    expect(() => settle({ value: 1, gauge: fine })).toThrow(RangeError);
    for (const readings of [0, -1, 1.5])
      expect(() => settle({ value: 1, ...band, gauge: fine, readings })).toThrow(RangeError);
    expect(() => settle({ value: 1, ...band, gauge: fine, repeatability: -1 })).toThrow(RangeError);
  });

  const part = fc.double({ min: 0.0001, max: 0.02, noNaN: true });
  /** As a gauge shows it: half a hundredth of a millimetre a step. */
  const value = fc.integer({ min: -20, max: 28 }).map((steps) => (13_600 + steps) / 200);

  test('the readings it asks for bring a verdict, and one fewer would not', () => {
    fc.assert(
      fc.property(value, part, part, part, (at, resolution, maxError, repeatability) => {
        const gauge = { resolution, maxError };
        const settling = settle({ value: at, ...band, gauge, repeatability });
        if (settling.by !== 'more-readings') return;
        const verdict = (readings: number) =>
          judge({
            value: at,
            ...band,
            uncertainty: meanUncertainty({ gauge, repeatability, readings }),
          }).verdict;
        // A hair of rounding may lie between the two computations.
        const { needed, readings } = settling;
        const slack = needed * 1e-9;
        expect(meanUncertainty({ gauge, repeatability, readings })).toBeLessThanOrEqual(
          needed + slack,
        );
        if (readings > 2) expect(verdict(readings - 1)).toBe('too-close');
      }),
    );
  });

  test('a gauge as good as it asks for brings a verdict', () => {
    fc.assert(
      fc.property(value, part, part, (at, resolution, maxError) => {
        const settling = settle({ value: at, ...band, gauge: { resolution, maxError } });
        if (settling.by !== 'better-gauge') return;
        const uncertainty = settling.needed * (1 - 1e-6);
        expect(judge({ value: at, ...band, uncertainty }).verdict).not.toBe('too-close');
      }),
    );
  });

  test('it is settled exactly where the verdict says so', () => {
    fc.assert(
      fc.property(value, part, part, (at, resolution, maxError) => {
        const { by, uncertainty } = settle({ value: at, ...band, gauge: { resolution, maxError } });
        const { verdict } = judge({ value: at, ...band, uncertainty });
        expect(by === 'nothing').toBe(verdict !== 'too-close');
      }),
    );
  });
});

describe('repeated readings', () => {
  test('mean and standard deviation', () => {
    const { mean, deviation } = repeated([68.03, 68.034, 68.038]);
    expect(mean).toBeCloseTo(68.034, 9);
    expect(deviation).toBeCloseTo(0.004, 9);
    expect(repeated([3])).toEqual({ mean: 3, deviation: 0 });
    expect(() => repeated([])).toThrow(RangeError);
  });
});
