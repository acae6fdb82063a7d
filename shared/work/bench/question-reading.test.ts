import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { displayNumber, toBase } from '../../trade/index.ts';
import { FEATURE_UNITS, FEATURES } from '../features.ts';
import { ODDS_TO_ASK, questionReading, type ReadingToQuestion } from './question-reading.ts';
import { HABITS } from './slips/feature-habits.ts';

const coilGap: ReadingToQuestion = {
  text: '0.3',
  unit: 'mm',
  feature: 'coil-air-gap',
  low: 0.2,
  high: 0.4,
  wearLimit: null,
  others: [],
  resolution: 0.01,
};
const bore: ReadingToQuestion = {
  text: '67.01',
  unit: 'mm',
  feature: 'bore',
  low: 67,
  high: 67.015,
  wearLimit: 67.08,
  others: [],
  resolution: 0.01,
};
const compression: ReadingToQuestion = {
  ...coilGap,
  unit: 'kPa',
  feature: 'compression',
  low: 600,
  high: 900,
  resolution: 10,
};
const ask = (reading: ReadingToQuestion, text: string, more: Partial<ReadingToQuestion> = {}) =>
  questionReading({ ...reading, ...more, text });

describe('a question about a reading', () => {
  it('asks whether 0.03 was 0.3', () => {
    expect(ask(coilGap, '0.03')).toMatchObject({ kind: 'decimal', likely: 0.3, unit: 'mm' });
    expect(ask(coilGap, '0,03')).toMatchObject({ likely: 0.3 });
  });

  it('offers the unit that the figure belongs to', () => {
    expect(ask(coilGap, '12')).toMatchObject({ kind: 'unit', likely: 12, unit: 'thou' });
    expect(ask(compression, '7.2')).toMatchObject({ kind: 'unit', likely: 7.2, unit: 'bar' });
    expect(ask(coilGap, '0.012')).toMatchObject({ kind: 'unit', likely: 0.012, unit: 'in' });
  });

  it('asks about what no such part can be, whatever the odds', () => {
    expect(ask(bore, '0.75')).not.toBeNull();
    expect(ask(bore, '670')).not.toBeNull();
    expect(ask(bore, '55')).toMatchObject({ kind: 'unexplained', likely: null });
    expect(ask(bore, '0.75', { low: null, high: null, wearLimit: null })).not.toBeNull();
    expect(
      ask(bore, '1', { low: null, high: null, wearLimit: null, resolution: null }),
    ).not.toBeNull();
  });

  it('leaves a tired or dead cylinder alone', () => {
    for (const text of ['450', '280', '140', '80', '40', '0'])
      expect(ask(compression, text), text).toBeNull();
  });

  it('leaves what wears far alone: ring gaps, end play, flatness', () => {
    const ring = { ...coilGap, feature: 'ring-end-gap', low: 0.15, high: 0.35 } as const;
    for (const text of ['0.5', '0.8', '1.2', '1.5']) expect(ask(ring, text), text).toBeNull();
    const flat = { ...coilGap, feature: 'head-flatness', low: null, high: 0.08 } as const;
    for (const text of ['0', '0.12', '0.3', '0.5']) expect(ask(flat, text), text).toBeNull();
  });

  it('believes a bore that its other readings bear out, and asks of one that they don’t', () => {
    expect(ask(bore, '67.50', { others: [67.51, 67.5] })).toBeNull();
    expect(ask(bore, '67.52', { others: [67.02, 67.02] })).toMatchObject({
      kind: 'sleeve',
      likely: 67.02,
    });
  });

  it('goes by the readings beside it where no band is', () => {
    const unknown = { ...coilGap, low: null, high: null };
    expect(ask(unknown, '0.03')).toBeNull();
    expect(ask(unknown, '0.03', { others: [0.3] })).toMatchObject({ likely: 0.3 });
  });

  it('takes digits that the gauge has no marks for as a sign of a slip', () => {
    const fine = { ...bore, text: '67.011', resolution: 0.001 };
    expect(questionReading(fine)).toBeNull();
    expect(ask(coilGap, '0.33', { resolution: 0.1 })).toMatchObject({
      kind: 'doubled',
      likely: 0.3,
    });
  });

  it('adds a deviation to the whole size that bounds the band, or to its lower limit', () => {
    expect(ask(bore, '0.03')).toMatchObject({ kind: 'deviation', likely: 67.03 });
    expect(ask(bore, '0.03', { low: 66.985, high: 67 })).toMatchObject({ likely: 67.03 });
    expect(ask(bore, '0.03', { low: 67.25, high: 67.265, wearLimit: null })).toMatchObject({
      likely: 67.28,
    });
  });

  it('refuses what is no reading, or measures something else', () => {
    for (const text of ['', 'about right', '0.2-0.3', '17 lbf·ft', '1 2'])
      expect(() => ask(coilGap, text), text).toThrow(RangeError);
    expect(() => ask(coilGap, '0.3', { unit: 'kPa' })).toThrow(RangeError);
    expect(() => ask(coilGap, '0.3', { low: Number.NaN })).toThrow(RangeError);
    expect(() => ask(coilGap, '0.3', { resolution: 0 })).toThrow(RangeError);
  });

  it('never asks about the middle of a band, of whatever feature', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...FEATURES.filter((feature) => HABITS[feature].possible[0] > 0)),
        fc.double({ min: 0.2, max: 0.8, noNaN: true }),
        fc.double({ min: 0.001, max: 0.05, noNaN: true }),
        (feature, where, width) => {
          const [least, most] = HABITS[feature].possible;
          const middle = least * (most / least) ** where;
          const text = String(Number(middle.toPrecision(6)));
          const reading = { ...bore, feature, unit: 'mm', wearLimit: null, resolution: null };
          const unit = FEATURE_UNITS[feature];
          const at = { low: middle * (1 - width), high: middle * (1 + width) };
          expect(questionReading({ ...reading, ...at, unit, text })).toBeNull();
        },
      ),
    );
  });

  it('comes to odds or to none at all, whatever the limits', () => {
    const limit = fc.option(fc.double({ min: -5, max: 5_000, noNaN: true }), { nil: null });
    fc.assert(
      fc.property(
        fc.constantFrom(...FEATURES),
        fc.oneof(
          fc.integer({ min: -10, max: 9_999 }).map((n) => n / 100),
          fc.nat(99_999),
        ),
        fc.tuple(limit, limit, limit),
        fc.array(fc.double({ min: -1, max: 5_000, noNaN: true }), { maxLength: 3 }),
        fc.option(fc.constantFrom(0.001, 0.01, 0.5, 10), { nil: null }),
        (feature, value, [one, other, wearLimit], others, resolution) => {
          const [low = null, high = null] =
            one === null || other === null
              ? [one, other]
              : [Math.min(one, other), Math.max(one, other)];
          const question = questionReading({
            text: String(value),
            unit: FEATURE_UNITS[feature],
            feature,
            low,
            high,
            wearLimit,
            others,
            resolution,
          });
          if (question !== null) expect(question.odds).toBeGreaterThanOrEqual(ODDS_TO_ASK);
        },
      ),
      { numRuns: 1_000 },
    );
  });

  it('gives odds above what a question costs, and a likely value other than the one typed', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.0001, max: 100_000, noNaN: true }),
        fc.constantFrom(...(['mm', 'in', 'thou', 'um'] as const)),
        fc.array(fc.double({ min: 60, max: 75, noNaN: true }), { maxLength: 5 }),
        (value, unit, others) => {
          const text = String(Number(value.toPrecision(5)));
          if (text.includes('e')) return;
          const question = ask(bore, text, { unit, others, resolution: null });
          if (question === null) return;
          expect(question.odds).toBeGreaterThanOrEqual(ODDS_TO_ASK);
          if (question.likely === null) return;
          expect(Number.isFinite(question.likely)).toBe(true);
          expect(toBase(question.likely, question.unit)).not.toBe(toBase(Number(text), unit));
        },
      ),
    );
  });

  it('says the same of one reading in whichever unit it is typed', () => {
    for (const mm of [67.01, 67.05, 67.3]) {
      const inches = displayNumber(mm, 'in');
      expect(ask(bore, `${inches} in`), String(mm)).toBe(ask(bore, String(mm)));
    }
  });
});
