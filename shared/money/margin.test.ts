import { expect, test } from 'vitest';
import { marginPpm, markupPpm, priceAtMarkup } from './margin.ts';

test('a part sold below cost has a margin below zero, one without a price has none', () => {
  expect(marginPpm(1_000, 1_250, 'half-up')).toBe(-250_000);
  expect(marginPpm(0, 500, 'half-up')).toBeNull();
  expect(marginPpm(500, 0, 'half-up')).toBe(1_000_000);
});

test('a markup is nothing at cost, and unknown below it or without one', () => {
  expect(markupPpm(1_000, 1_000, 'half-up')).toBe(0);
  expect(markupPpm(1_500, 1_000, 'half-up')).toBe(500_000);
  expect(markupPpm(999, 1_000, 'half-up')).toBeNull();
  expect(markupPpm(0, 1_000, 'half-up')).toBeNull();
  expect(markupPpm(1_000, 0, 'half-up')).toBeNull();
  // To a hundredth of a per cent: a third more is 33.33 %.
  expect(markupPpm(400, 300, 'half-up')).toBe(333_300);
});

test('nonsense is refused', () => {
  expect(() => markupPpm(-1, 0, 'half-up')).toThrow(RangeError);
  expect(() => marginPpm(0, -1, 'half-up')).toThrow(RangeError);
  expect(() => priceAtMarkup(-1, 0, 'half-up')).toThrow(RangeError);
  expect(() => priceAtMarkup(100, -1, 'half-up')).toThrow(RangeError);
  expect(() => priceAtMarkup(1.5, 0, 'half-up')).toThrow(RangeError);
  expect(() => marginPpm(-1, 0, 'half-up')).toThrow(RangeError);
});
