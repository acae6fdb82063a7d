import { expect, test } from 'vitest';
import { type DraftOption, withOption, withoutOption } from './kept-estimate.ts';

const alone: DraftOption = { key: 1, label: '', lines: [], discount: null };
const empty = { lines: [], discount: null };

test('a second option gives the first its name, and each has another', () => {
  const two = withOption([alone], empty);
  expect(two.map(({ label }) => label)).toEqual(['Repair', 'Rebuild']);
  const three = withOption(two, empty);
  expect(three.map(({ key, label }) => [key, label])).toEqual([
    [1, 'Repair'],
    [2, 'Rebuild'],
    [3, 'Replace the engine'],
  ]);
  expect(withOption(three, empty).at(-1)?.label).toBe('');
});

test('a name that somebody typed stays, and one taken out is free again', () => {
  const typed = withOption([{ ...alone, label: 'Rebuild' }], empty);
  expect(typed.map(({ label }) => label)).toEqual(['Rebuild', 'Repair']);
  const again = withOption(withoutOption(withOption(typed, empty), 2), empty);
  expect(again.map(({ label }) => label)).toEqual(['Rebuild', 'Replace the engine', 'Repair']);
});

test('one that is left alone needs no name', () => {
  expect(withoutOption(withOption([alone], empty), 1)).toEqual([
    { key: 2, label: '', lines: [], discount: null },
  ]);
});
