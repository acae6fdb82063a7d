import { describe, expect, test } from 'vitest';
import {
  amountWords,
  bandWords,
  goodToWords,
  printedLimits,
  slipSentence,
  verdictSentence,
} from './measure-words.ts';

const spaced = (words: string) => words.replaceAll('\u00A0', ' ');
const band = { low: 0.2, high: 0.4 };

test('a band in words, with one limit or two', () => {
  expect(spaced(bandWords(band, 'mm'))).toBe('0.20–0.40 mm');
  expect(spaced(bandWords({ low: null, high: 0.05 }, 'mm'))).toBe('at most 0.05 mm');
  expect(spaced(bandWords({ low: 400, high: null }, 'kPa'))).toBe('at least 400 kPa');
  expect(spaced(bandWords({ low: 20, high: 20 }, 'N·m'))).toBe('20 N·m');
  expect(bandWords({ low: null, high: null }, 'mm')).toBe('no limits');
});

test('limits as printed keep every digit of the source', () => {
  expect(printedLimits({ low: '.0070', high: '.0090', unit: 'in' })).toBe('.0070–.0090 in');
  expect(printedLimits({ low: '', high: '0.05', unit: 'mm' })).toBe('at most 0.05 mm');
});

test('an amount that the usual decimals would round away keeps one digit', () => {
  expect(spaced(amountWords(0.0004, 'mm'))).toBe('0.0004 mm');
  expect(spaced(amountWords(0, 'mm'))).toBe('0.00 mm');
});

describe('why a verdict came out as it did', () => {
  const sentence = (
    value: number,
    uncertainty: number,
    verdict: 'within' | 'outside' | 'too-close',
  ) => spaced(verdictSentence({ ...band, value, uncertainty, verdict }, 'mm'));
  test('within names the nearer limit and the distance', () => {
    expect(sentence(0.25, 0.01, 'within')).toBe('Inside 0.20–0.40 mm, 0.05 mm from the low limit.');
    expect(sentence(0.4, 0, 'within')).toContain('On the high limit');
  });
  test('outside names the side', () => {
    expect(sentence(0.45, 0, 'outside')).toBe('0.05 mm above the high limit (0.20–0.40 mm).');
    expect(sentence(0.15, 0, 'outside')).toContain('below the low limit');
  });
  test('too close says how good the gauge is', () => {
    expect(sentence(0.398, 0.01, 'too-close')).toContain('the gauge is good to ±0.01 mm');
    expect(sentence(0.398, 0.01, 'too-close')).toContain('it can’t tell');
  });
});

test('a slip is named as a mechanic would', () => {
  expect(slipSentence('decimal', 0.03, 0.3)).toContain('slip of ten');
  expect(slipSentence('decimal', 30, 0.3)).toContain('slip of a hundred');
  expect(slipSentence('inch', 0.012, 0.3048)).toContain('inches');
  expect(slipSentence('foot-inch', 204, 17)).toContain('inch-pounds');
});

test('what a gauge is good to has two figures, and what it has to be is never rounded up', () => {
  expect(spaced(goodToWords(0.002434, 'mm'))).toBe('0.0024 mm');
  expect(spaced(goodToWords(0.0018, 'mm'))).toBe('0.0018 mm');
  expect(spaced(goodToWords(23.8, 'kPa'))).toBe('24 kPa');
  expect(spaced(goodToWords(33.902 - 33.9, 'mm', 'down'))).toBe('0.002 mm');
  expect(spaced(goodToWords(0.00199, 'mm', 'down'))).toBe('0.0019 mm');
  expect(
    spaced(
      verdictSentence(
        { value: 33.902, low: 33.9, high: 33.966, uncertainty: 0.002434, verdict: 'too-close' },
        'mm',
      ),
    ),
  ).toBe('0.002 mm from the low limit, and the gauge is good to ±0.0024 mm: it can’t tell.');
});
