import { expect, test } from 'vitest';
import { liesIn, overlap, racksOf } from './bins.ts';

test('a bin lies in itself and in its rack, not in what merely begins alike', () => {
  expect(liesIn('A1-01', 'A1-01')).toBe(true);
  expect(liesIn('A1-01', 'A1')).toBe(true);
  expect(liesIn('A10-1', 'A1')).toBe(false);
  expect(liesIn('A1', 'A1-01')).toBe(false);
  expect(liesIn('', '')).toBe(true);
  expect(liesIn('A1', '')).toBe(false);
});

test('two places overlap when one lies in the other', () => {
  expect(overlap('A1', 'A1-01')).toBe(true);
  expect(overlap('A1-01', 'A1')).toBe(true);
  expect(overlap('A1-01', 'A1-02')).toBe(false);
});

test('racks have two bins at least and are no bins themselves', () => {
  expect(racksOf(['A1-01', 'A1-02', 'A2-01', 'B-1-1', 'B-1-2', 'C 1', 'C 2', 'C', ''])).toEqual([
    'A1',
    'B',
    'B-1',
  ]);
});
