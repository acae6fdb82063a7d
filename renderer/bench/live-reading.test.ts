import { expect, test } from 'vitest';
import type { GaugeInHand } from '../../shared/work/bench/gauge-remark.ts';
import type { PlaceBand } from '../../shared/work/bench/reading-verdict.ts';
import { liveReading } from './live-reading.ts';

// An air gap of 0.2 to 0.4 mm, set at 0.3: common practice, no source.
const gap = { low: 0.2, high: 0.4 };
const leaves = (maxError: number): GaugeInHand => ({
  name: 'Leaves',
  unit: 'mm',
  rangeLow: 0.05,
  rangeHigh: 1,
  resolution: 0.001,
  maxError,
  errorKind: 'absolute',
  expired: false,
  calibrationDue: null,
  foundBadOn: null,
});
const live = (text: string, limits: PlaceBand = gap, maxError = 0.001) =>
  liveReading(
    {
      text,
      unit: 'mm',
      feature: 'coil-air-gap',
      place: { ...limits, share: 1 },
      gauge: leaves(maxError),
    },
    { ...limits, wearLimit: null, others: [] },
  );

test('an empty field says nothing', () => {
  expect(live('  ')).toEqual({ state: 'empty' });
});

test('0.03 is outside, and a slip of ten', () => {
  expect(live('0.03')).toMatchObject({
    state: 'read',
    valueBase: 0.03,
    verdict: 'outside',
    slip: { kind: 'decimal', likely: 0.3 },
  });
});

test('a unit typed wins, and the likely value is in it', () => {
  expect(live('12 thou')).toMatchObject({
    unit: 'thou',
    valueBase: 0.3048,
    verdict: 'within',
    slip: null,
  });
  expect(live('1.2 thou')).toMatchObject({
    verdict: 'outside',
    slip: { kind: 'decimal', likely: 12 },
  });
});

test('the gauge’s uncertainty is taken into account', () => {
  expect(live('0.395')).toMatchObject({ verdict: 'within' });
  expect(live('0.395', gap, 0.01)).toMatchObject({ verdict: 'too-close' });
});

test('without a band there is neither verdict nor question', () => {
  expect(live('0.03', { low: null, high: null })).toMatchObject({
    verdict: 'no-band',
    slip: null,
  });
});

test('what is no reading says why', () => {
  expect(live('a hair')).toMatchObject({ state: 'unreadable' });
  expect(live('17 lbf·ft')).toMatchObject({ state: 'unreadable' });
});
