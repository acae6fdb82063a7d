import { describe, expect, test } from 'vitest';
import type { Reading, Verdict } from '../../shared/contract/bench/index.ts';
import { ReadingId } from '../../shared/contract/ids.ts';
import type { Phase } from '../../shared/work/vocabulary.ts';
import {
  nextPlace,
  type PlaceOnSheet,
  standingReading,
  summarise,
  targetOf,
} from './sheet-reading.ts';

let made = 0;
function reading(
  text: string,
  facts: { phase?: Phase; verdict?: Verdict; superseded?: boolean } = {},
) {
  made += 1;
  return {
    id: ReadingId.parse(`00000000-0000-7000-8000-${String(made).padStart(12, '0')}`),
    feature: 'bore',
    place: '',
    placeLabel: '',
    phase: 'final',
    text,
    unit: 'mm',
    value: Number(text),
    valueBase: Number(text),
    gauge: null,
    gaugeRemark: '',
    uncertaintyBase: 0,
    temperature: null,
    position: null,
    low: 68,
    high: 68.04,
    verdict: 'within',
    conformance: 1,
    questioned: null,
    specificationId: null,
    by: 'Ada Ferrow',
    at: new Date(Date.UTC(2026, 2, 2, 9, made)).toISOString(),
    supersedes: null,
    superseded: false,
    ...facts,
  } satisfies Reading;
}

const place = (key: string, ...readings: Reading[]): PlaceOnSheet => ({
  key,
  label: key,
  cylinder: 1,
  share: 1,
  low: 68,
  high: 68.04,
  aim: null,
  wearLimit: null,
  came: null,
  decided: null,
  renewed: false,
  readings,
  earlier: [],
});

const feature = (...places: PlaceOnSheet[]) => ({
  feature: 'bore' as const,
  label: 'Cylinder bore',
  hint: '',
  asked: true,
  specification: null,
  unit: 'mm' as const,
  places,
});

describe('the reading that stands', () => {
  test('is the newest of its phase that was not corrected', () => {
    const spot = place(
      'top',
      reading('68.01'),
      reading('68.02'),
      reading('68.99', { superseded: true }),
      reading('68.05', { phase: 'as-received' }),
    );
    expect(standingReading(spot, 'final')?.text).toBe('68.02');
    expect(standingReading(spot, 'as-received')?.text).toBe('68.05');
    expect(standingReading(spot, 'after-machining')).toBeUndefined();
  });
});

describe('the place wanted next', () => {
  test('is the first without a reading in this phase', () => {
    const places = [place('top', reading('68.01')), place('middle'), place('bottom')];
    expect(nextPlace(places, 'final')?.key).toBe('middle');
    expect(nextPlace(places, 'as-received')?.key).toBe('top');
  });

  test('comes after the one just recorded, and goes round once', () => {
    const places = [place('top'), place('middle'), place('bottom')];
    expect(nextPlace(places, 'final', 'middle')?.key).toBe('bottom');
    expect(nextPlace(places, 'final', 'bottom')?.key).toBe('top');
    expect(nextPlace([place('only')], 'final', 'only')).toBeNull();
  });
});

test('a place is set to the source’s aim, else to the middle of its band', () => {
  expect(targetOf(place('top'))).toBe(68.02);
  expect(targetOf({ ...place('top'), aim: 68.01 })).toBe(68.01);
  expect(targetOf({ ...place('top'), low: null })).toBeNull();
});

describe('how a feature fares', () => {
  test('names the verdict that asks for most attention', () => {
    const fares = (...readings: Reading[]) =>
      summarise(feature(...readings.map((each, index) => place(String(index), each))), 'final');
    expect(fares(reading('68.01'), reading('68.05', { verdict: 'outside' }))).toMatchObject({
      measured: 2,
      worst: 'outside',
      words: '1 outside',
    });
    expect(fares(reading('68.01'), reading('68.039', { verdict: 'too-close' })).words).toBe(
      '1 too close to call',
    );
    expect(fares(reading('68.01'), reading('68.02')).words).toBe('all within');
    expect(summarise(feature(place('top')), 'final')).toMatchObject({
      measured: 0,
      worst: null,
      words: 'not measured',
    });
  });
});
