import { expect, test } from 'vitest';
import { type Suspected, suspicionOf } from './suspicion.ts';

const NO_BAND = { low: null, high: null };
const place = (key: string, share = 1) => ({ key, cylinder: 1, share });
const places = [place('stage-1', 0.5), place('stage-2')];
const reading = (at: string, valueBase: number, change = {}) => ({
  feature: 'head-bolt-torque' as const,
  place: at,
  phase: 'final' as const,
  superseded: false,
  valueBase,
  ...change,
});
const suspected = (change: Partial<Suspected>): Suspected => ({
  feature: 'head-bolt-torque',
  value: 23,
  band: NO_BAND,
  place: place('stage-2'),
  places,
  phase: 'final',
  readings: [],
  ...change,
});

test('a band speaks where there is one, with one limit too', () => {
  const band = { low: 20, high: null };
  const fellow = [reading('stage-1', 11.5)];
  expect(suspicionOf(suspected({ value: 2.3, band, readings: fellow }))).toEqual({
    slip: { kind: 'decimal', likely: 23 },
    against: 'band',
    fellows: [],
  });
  expect(suspicionOf(suspected({ value: 23, band })).slip).toBeNull();
});

test('without one the places beside it do, each brought to the share of this place', () => {
  // Half of the torque at the first stage: what stood there answers for twice as much here.
  const beside = suspicionOf(suspected({ value: 276, readings: [reading('stage-1', 11.5)] }));
  expect(beside).toEqual({
    slip: { kind: 'foot-inch', likely: 23 },
    against: 'pair',
    fellows: [23],
  });
  const first = suspected({
    value: 11.5,
    place: place('stage-1', 0.5),
    readings: [reading('stage-2', 24)],
  });
  expect(suspicionOf(first)).toEqual({ slip: null, against: 'pair', fellows: [12] });
});

test('what was corrected, or is of another phase or feature, stands beside nothing', () => {
  const readings = [
    reading('stage-1', 0.115, { superseded: true }),
    reading('stage-1', 0.115, { phase: 'as-received' }),
    reading('stage-1', 0.115, { feature: 'rod-bolt-torque' }),
    reading('stage-9', 0.115),
  ];
  expect(suspicionOf(suspected({ readings }))).toEqual({
    slip: null,
    against: 'pair',
    fellows: [],
  });
});
