import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readRate, writeRate } from './rate-text.ts';

test('reads percent as typed, with point or comma', () => {
  expect(
    ['6.25', '6,25', '8', '0', '100', '7.', '6.25 %', '0.0001'].map((typed) => readRate(typed)),
  ).toEqual([62_500, 62_500, 80_000, 0, 1_000_000, 70_000, 62_500, 1]);
});

test('refuses what is no rate', () => {
  const refused = ['', '-1', '101', '100.5', '6.12345', 'abc', '1e2'];
  expect(refused.map((typed) => readRate(typed))).toEqual(refused.map(() => null));
});

test('a markup may be more than the whole', () => {
  expect(readRate('150', 10_000_000)).toBe(1_500_000);
  expect(readRate('1000.1', 10_000_000)).toBeNull();
});

test('what is written is read back the same', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1_000_000 }), (ppm) => {
      expect(readRate(writeRate(ppm))).toBe(ppm);
    }),
  );
});
