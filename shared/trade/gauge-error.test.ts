import { expect, test } from 'vitest';
import { largestErrorAt, uncertaintyAt } from './gauge-error.ts';
import { gaugeUncertainty } from './uncertainty.ts';

const GAUGE = { errorKind: 'absolute', maxError: 0.02, rangeHigh: 10, resolution: 0.01 } as const;

test('an error is an amount, per cent of the reading or of full scale', () => {
  expect(largestErrorAt(GAUGE, 5)).toBe(0.02);
  expect(largestErrorAt({ ...GAUGE, errorKind: 'of-reading', maxError: 4 }, 5)).toBeCloseTo(0.2);
  expect(largestErrorAt({ ...GAUGE, errorKind: 'of-full-scale', maxError: 4 }, 5)).toBeCloseTo(0.4);
  expect(largestErrorAt({ ...GAUGE, errorKind: 'of-reading', maxError: 4 }, -5)).toBeCloseTo(0.2);
});

test('an absolute error alone is the uncertainty that it was before', () => {
  expect(uncertaintyAt(GAUGE, 5)).toBe(gaugeUncertainty(GAUGE));
});

test('repeatability and setting master each add to it', () => {
  const plain = uncertaintyAt(GAUGE, 5);
  expect(uncertaintyAt({ ...GAUGE, repeatability: 0.01 }, 5)).toBeCloseTo(Math.hypot(plain, 0.02));
  expect(uncertaintyAt({ ...GAUGE, settingError: 0.02 }, 5)).toBeCloseTo(
    gaugeUncertainty({ resolution: 0.01, maxError: 0.02 * Math.SQRT2 }),
  );
  expect(() => uncertaintyAt({ ...GAUGE, settingError: -1 }, 5)).toThrow(RangeError);
});
