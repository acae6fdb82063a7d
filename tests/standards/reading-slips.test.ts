import { describe, expect, it } from 'vitest';
import { convert, parseReading, toBase, type Unit } from '../../shared/trade/index.ts';
import { questionReading } from '../../shared/work/bench/question-reading.ts';
import { BANDS, type BandName, type FieldBand } from './reading-slips/bands.ts';
import { RIGHT_READINGS } from './reading-slips/right-readings.ts';
import { WRONG_READINGS, type WrongReading } from './reading-slips/wrong-readings.ts';

/**
 * What is asked about, set beside readings with a known cause. Engines, slips and their shares are invented,
 * no source: what is checked is that most slips are found with the right value, and that worn and failed
 * parts are believed.
 */

const inBase = (limit: number | null, unit: Unit) => (limit === null ? null : toBase(limit, unit));

function questionOn(name: BandName, text: string, others: readonly number[] = []) {
  const { feature, unit, low, high, wearLimit, resolution }: FieldBand = BANDS[name];
  return questionReading({
    text,
    unit,
    feature,
    low: inBase(low, unit),
    high: inBase(high, unit),
    wearLimit: inBase(wearLimit, unit),
    others: others.map((other) => toBase(other, unit)),
    resolution,
  });
}

function isFound({ band, typed, meant, others }: WrongReading): boolean {
  const question = questionOn(band, typed, others);
  if (question === null || question.likely === null) return false;
  const right = parseReading(meant, BANDS[band].unit);
  const likely = convert(question.likely, question.unit, right.unit);
  return Math.abs(likely - right.value) <= Math.abs(right.value) * 1e-6;
}

/** How many of each cause are found with the right value. What is left can't be told from a worn part. */
const FOUND: Record<keyof typeof WRONG_READINGS, number> = {
  'decimal point one place off': 24,
  'decimal point two or three places off, or left out': 13,
  'inches and millimetres': 9,
  'thousandths of an inch': 9,
  'one torque unit for another': 7,
  'one pressure unit for another': 8,
  'ohms and kilohms': 4,
  'two digits transposed': 10,
  'a digit left out': 7,
  'a digit doubled': 6,
  'a micrometer’s sleeve half a turn off': 9,
  'a frame of another size': 4,
  'various, no gauge named': 11,
  'only the deviation': 5,
};

describe('wrong readings', () => {
  it.each(Object.entries(WRONG_READINGS))('%s', (cause, readings) => {
    expect(readings.filter(isFound).length).toBeGreaterThanOrEqual(FOUND[cause] ?? readings.length);
  });

  it('are found with the right value in seven of eight', () => {
    const all = Object.values(WRONG_READINGS).flat();
    expect(all.length).toBeGreaterThanOrEqual(100);
    expect(all.filter(isFound).length / all.length).toBeGreaterThanOrEqual(7 / 8 - 0.01);
  });
});

const rightReadings = (of: 'inside' | 'outside') =>
  Object.entries(RIGHT_READINGS).flatMap(([name, readings]) =>
    readings[of]
      .split(' ')
      .filter((text) => text !== '')
      .map((text) => ({ name: name as BandName, text })),
  );
const asked = (readings: { name: BandName; text: string }[]) =>
  readings.filter(({ name, text }) => questionOn(name, text) !== null);

describe('right readings', () => {
  it('inside the limits are never asked about', () => {
    expect(asked(rightReadings('inside'))).toEqual([]);
  });

  it('of parts that are truly worn or have failed are asked about in one of fifty at most', () => {
    const outside = rightReadings('outside');
    expect(outside.length).toBeGreaterThanOrEqual(270);
    expect(outside.length + rightReadings('inside').length).toBeGreaterThanOrEqual(500);
    expect(asked(outside).length / outside.length).toBeLessThanOrEqual(1 / 50);
  });
});
