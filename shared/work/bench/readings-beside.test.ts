import { expect, test } from 'vitest';
import { type BesideWhat, readingsBeside } from './readings-beside.ts';

const place = (key: string, share = 1, cylinder = 1) => ({ key, cylinder, share });
const places = [place('stage-1', 0.5), place('stage-2'), place('c2-stage-2', 1, 2)];
const reading = (at: string, valueBase: number, change = {}) => ({
  feature: 'head-bolt-torque' as const,
  place: at,
  phase: 'final' as const,
  superseded: false,
  valueBase,
  ...change,
});
const beside = (readings: BesideWhat['readings'], feature: BesideWhat['feature']) =>
  readingsBeside({ feature, place: place('stage-2'), places, phase: 'final', readings });

test('the other places of the cylinder are beside it, each brought to the share of this place', () => {
  expect(beside([reading('stage-1', 11.5)], 'head-bolt-torque')).toEqual([23]);
});

test('not the place itself, another cylinder or phase, nor what was corrected or is unknown', () => {
  expect(
    beside(
      [
        reading('stage-2', 20),
        reading('c2-stage-2', 20),
        reading('stage-1', 20, { phase: 'as-received' }),
        reading('stage-1', 20, { superseded: true }),
        reading('stage-9', 20),
        reading('stage-1', 20, { feature: 'plug-torque' }),
      ],
      'head-bolt-torque',
    ),
  ).toEqual([]);
});

test('closed and open are far apart by nature', () => {
  expect(
    beside([reading('stage-1', 6, { feature: 'valve-travel-intake' })], 'valve-travel-intake'),
  ).toEqual([]);
});
