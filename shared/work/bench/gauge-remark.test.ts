import { expect, test } from 'vitest';
import { type GaugeInHand, gaugeRemark, uncertaintyInBase } from './gauge-remark.ts';

const GAUGE: GaugeInHand = {
  name: 'Micrometer, 1–2 in',
  unit: 'in',
  rangeLow: 1,
  rangeHigh: 2,
  uncertainty: 0.0002,
  expired: false,
  calibrationDue: '2027-01-31',
  foundBadOn: null,
};

test('a gauge is good from one end of its range to the other, both included', () => {
  for (const value of [25.4, 30, 50.8]) expect(gaugeRemark(GAUGE, value, 'mm')).toBe('');
  for (const value of [25.39, 50.81])
    expect(gaugeRemark(GAUGE, value, 'mm')).toBe('outside the gauge’s range, 1 to 2 in');
});

test('all that is to be said of it is said', () => {
  expect(gaugeRemark(null, 30, 'mm')).toBe('no gauge named');
  const doubtful = { ...GAUGE, expired: true, foundBadOn: '2026-11-02' };
  expect(gaugeRemark(doubtful, 2.5, 'in')).toBe(
    'gauge was found bad on 2026-11-02; calibration was due 2027-01-31; outside the gauge’s range, 1 to 2 in',
  );
});

test('an uncertainty is a difference: half a degree Fahrenheit is 0.28 °C, and not −17', () => {
  expect(uncertaintyInBase(null)).toBe(0);
  expect(uncertaintyInBase(GAUGE)).toBe(0.00508);
  expect(uncertaintyInBase({ ...GAUGE, unit: '°F', uncertainty: 0.5 })).toBeCloseTo(0.5 / 1.8, 12);
  expect(uncertaintyInBase({ ...GAUGE, unit: 'K', uncertainty: 0.5 })).toBe(0.5);
});
