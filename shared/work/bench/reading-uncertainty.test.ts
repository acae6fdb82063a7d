import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FEATURE_UNITS, MEASURED_FEATURES } from '../features.ts';
import type { GaugeInHand } from './gauge-remark.ts';
import { readingUncertainty, type TakenReading } from './reading-uncertainty.ts';

const LEAVES: GaugeInHand = {
  name: 'Leaves',
  unit: 'in',
  rangeLow: 0.001,
  rangeHigh: 0.05,
  resolution: 0.001,
  maxError: 0.0002,
  errorKind: 'absolute',
  expired: false,
  calibrationDue: null,
  foundBadOn: null,
};
const WRENCH: GaugeInHand = {
  ...LEAVES,
  unit: 'N·m',
  rangeLow: 5,
  rangeHigh: 60,
  resolution: 0.1,
  maxError: 4,
  errorKind: 'of-reading',
};
const gap: TakenReading = {
  feature: 'coil-air-gap',
  text: '0.3',
  value: 0.3,
  unit: 'mm',
  gauge: null,
};

describe('how well a reading is known', () => {
  it('comes from the gauge, in the base unit', () => {
    // 2·√(0.0005² + 0.0002²)/√3 in, by hand: 0.000622 in.
    expect(readingUncertainty({ ...gap, gauge: LEAVES })).toBeCloseTo(0.000_621_8 * 25.4, 5);
  });

  it('without a gauge is what the last digit typed can tell, and a usual gauge beside', () => {
    const at = (text: string, unit: TakenReading['unit'] = 'mm') =>
      readingUncertainty({ ...gap, text, value: Number(text), unit });
    // 2·√(0.05² + 0.01²)/√3 and 2·√(0.005² + 0.01²)/√3 mm, by hand.
    expect(at('0.3')).toBeCloseTo(0.058_88, 5);
    expect(at('0.30')).toBeCloseTo(0.012_91, 5);
    expect(at('0.012', 'in')).toBeGreaterThan(0.0127);
    expect(readingUncertainty({ ...gap, text: '1/64 in', value: 1 / 64, unit: 'in' })).toBeCloseTo(
      0.2294,
      3,
    );
  });

  it('is never nothing without a gauge, whatever is measured', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...MEASURED_FEATURES),
        fc.integer({ min: 1, max: 9_999 }),
        (feature, value) => {
          const reading = { feature, text: String(value), value, unit: FEATURE_UNITS[feature] };
          expect(readingUncertainty({ ...reading, gauge: null })).toBeGreaterThan(0);
        },
      ),
    );
  });

  it('of a torque is what the wrench’s papers allow at that setting', () => {
    const torque = { feature: 'head-bolt-torque', text: '26', value: 26, unit: 'N·m' } as const;
    expect(readingUncertainty({ ...torque, gauge: WRENCH })).toBeCloseTo(26 * 0.04, 1);
    expect(
      readingUncertainty({ ...torque, gauge: { ...WRENCH, errorKind: 'of-full-scale' } }),
    ).toBeCloseTo(2.4);
    expect(readingUncertainty({ ...torque, gauge: null })).toBeCloseTo(26 * 0.06, 1);
  });
});
