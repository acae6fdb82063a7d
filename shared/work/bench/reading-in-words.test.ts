import { expect, test } from 'vitest';
import { asTyped, otherUnit } from './reading-in-words.ts';

test.each([
  ['0.3', 'mm', '0.3\u00A0mm'],
  ['1-3/8', 'in', '1-3/8\u00A0in'],
  ['-0,02', 'mm', '-0,02\u00A0mm'],
  ['０．３', 'mm', '０．３\u00A0mm'],
  ['.006"', 'in', '.006"'],
  ['17 lbf·ft', 'lbf·ft', '17 lbf·ft'],
  ['2,5 kΩ', 'kΩ', '2,5 kΩ'],
] as const)('‘%s’ in %s is written once with its unit', (text, unit, written) => {
  expect(asTyped({ text, unit })).toBe(written);
});

test('each unit has its fellow in the other system, where there is one', () => {
  expect(otherUnit('mm')).toBe('in');
  expect(otherUnit('lbf·in')).toBe('N·m');
  expect(otherUnit('Ω')).toBeUndefined();
});
