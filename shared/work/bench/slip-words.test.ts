import { expect, test } from 'vitest';
import { keptWords, likelyFigure, takenWords } from './slip-words.ts';

const plain = (words: string) => words.replaceAll('\u00a0', ' ');

test('a figure is offered as it would be typed', () => {
  expect(likelyFigure(0.304_800_000_000_01)).toBe('0.3048');
  expect(likelyFigure(68.021)).toBe('68.021');
  expect(likelyFigure(12)).toBe('12');
});

test('what was typed is said beside what was taken', () => {
  const taken = { text: '0.3', unit: 'mm', typed: { text: '0.03', unit: 'mm' } } as const;
  expect(takenWords(taken)).toBe('typed 0.03, taken as 0.3');
  const thou = { text: '12', unit: 'thou', typed: { text: '12', unit: 'mm' } } as const;
  expect(plain(takenWords(thou))).toBe('typed 12 mm, taken as 12 thou');
});

test('so is what was offered and not taken', () => {
  expect(plain(keptWords({ likely: 0.3, unit: 'mm' }))).toBe('questioned (0.3 mm?), kept as typed');
  expect(keptWords({ likely: null, unit: 'mm' })).toBe('questioned, kept as typed');
});
