import { expect, test } from 'vitest';
import { liveReading } from './live-reading.ts';

// An air gap of 0.2 to 0.4 mm, set at 0.3: common practice, no source.
const gap = { low: 0.2, high: 0.4 };

test('an empty field says nothing', () => {
  expect(liveReading('  ', 'mm', gap, 0)).toEqual({ state: 'empty' });
});

test('0.03 is outside, and a slip of ten', () => {
  expect(liveReading('0.03', 'mm', gap, 0)).toMatchObject({
    state: 'read',
    valueBase: 0.03,
    verdict: 'outside',
    slip: { kind: 'decimal', likely: 0.3 },
  });
});

test('a unit typed wins, and the likely value is in it', () => {
  expect(liveReading('12 thou', 'mm', gap, 0)).toMatchObject({
    unit: 'thou',
    valueBase: 0.3048,
    verdict: 'within',
    slip: null,
  });
  expect(liveReading('1.2 thou', 'mm', gap, 0)).toMatchObject({
    verdict: 'outside',
    slip: { kind: 'decimal', likely: 12 },
  });
});

test('the gauge’s uncertainty is taken into account', () => {
  expect(liveReading('0.395', 'mm', gap, 0)).toMatchObject({ verdict: 'within' });
  expect(liveReading('0.395', 'mm', gap, 0.01)).toMatchObject({ verdict: 'too-close' });
});

test('without a band there is neither verdict nor question', () => {
  expect(liveReading('0.03', 'mm', { low: null, high: null }, 0)).toMatchObject({
    verdict: 'no-band',
    slip: null,
  });
});

test('what is no reading says why', () => {
  expect(liveReading('a hair', 'mm', gap, 0)).toMatchObject({ state: 'unreadable' });
  expect(liveReading('17 lbf·ft', 'mm', gap, 0)).toMatchObject({ state: 'unreadable' });
});
