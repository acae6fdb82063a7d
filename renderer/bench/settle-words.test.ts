import { expect, test } from 'vitest';
import type { Gauge, Reading } from '../../shared/contract/bench/index.ts';
import { GaugeId, ReadingId } from '../../shared/contract/ids.ts';
import { repeatedWords, whatSettles } from './settle-words.ts';

const band = { low: 68, high: 68.04 };
const gauge = {
  id: GaugeId.parse('00000000-0000-7000-8000-000000000001'),
  name: 'Bore gauge',
  kind: 'bore-gauge',
  unit: 'mm',
  rangeLow: 50,
  rangeHigh: 100,
  resolution: 0.001,
  maxError: 0.002,
  length: null,
  uncertainty: 0.00238,
  calibratedOn: null,
  calibrationDue: null,
  certificate: '',
  expired: false,
  foundBadOn: null,
} satisfies Gauge;
const spaced = (words: string) => words.replaceAll('\u00A0', ' ');

const reading = (valueBase: number, index: number) =>
  ({
    id: ReadingId.parse(`00000000-0000-7000-8000-00000000010${index}`),
    feature: 'bore',
    place: 'c1-top-along',
    placeLabel: '',
    phase: 'final',
    text: String(valueBase),
    unit: 'mm',
    value: valueBase,
    valueBase,
    gauge: { id: gauge.id, name: gauge.name },
    gaugeRemark: '',
    uncertaintyBase: gauge.uncertainty,
    temperature: null,
    position: null,
    verdict: 'within',
    conformance: 1,
    questioned: null,
    specificationId: null,
    low: 68,
    high: 68.04,
    by: 'Ada Ferrow',
    at: '2026-03-02T09:00:00.000Z',
    supersedes: null,
    superseded: false,
  }) satisfies Reading;

test('one reading too close for its gauge asks for a better one, and says how good', () => {
  expect(spaced(whatSettles(68.039, band, gauge, 'mm'))).toContain('good to ±0.001 mm or better');
  expect(whatSettles(68.04, band, gauge, 'mm')).toContain('on the limit itself');
  expect(whatSettles(68.02, band, gauge, 'mm')).toBe('');
  expect(whatSettles(68.039, band, null, 'mm')).toBe('');
});

test('readings that scatter ask for more of them, and say how many', () => {
  const words = spaced(repeatedWords([reading(68.03, 1), reading(68.037, 2)], band, gauge, 'mm'));
  expect(words).toContain('Mean of 2 readings 68.0335 mm');
  expect(words).toContain('too close to call');
  expect(words).toMatch(/To settle it: \d+ readings in all/);
});

test('enough of them settle it', () => {
  const many = [68.034, 68.036, 68.035, 68.034, 68.036].map(reading);
  expect(spaced(repeatedWords(many, band, gauge, 'mm'))).toMatch(/scatter: within\.$/);
  expect(repeatedWords(many.slice(0, 1), band, gauge, 'mm')).toBe('');
});
