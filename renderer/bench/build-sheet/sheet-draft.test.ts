import { expect, test } from 'vitest';
import { keyFor, moved, NEW_STEP, wiresAsText, wiresFromText } from './sheet-draft.ts';

const steps = ['a', 'b', 'c'].map((key) => ({ ...NEW_STEP, key }));
const keys = (list: readonly { key: string }[]) => list.map(({ key }) => key).join('');

test('a step goes up and down, and no further than the ends', () => {
  expect(keys(moved(steps, 1, -1))).toBe('bac');
  expect(keys(moved(steps, 1, 1))).toBe('acb');
  expect(keys(moved(steps, 0, -1))).toBe('abc');
  expect(keys(moved(steps, 2, 1))).toBe('abc');
});

test('a key is made of the words, once, in any alphabet', () => {
  expect(keyFor('Gasket, new (head)', [])).toBe('gasket-new-head');
  expect(keyFor('Über die Ölwanne', [])).toBe('u-ber-die-o-lwanne');
  expect(keyFor('b', steps)).toBe('b-2');
  expect(keyFor('点火', [{ key: 'step' }])).toBe('step-2');
});

test('wires come back from their lines', () => {
  const wires = [
    { from: 'red', to: 'red/white' },
    { from: 'black', to: 'black' },
  ];
  expect(wiresFromText(wiresAsText(wires))).toEqual(wires);
  expect(wiresFromText('')).toEqual([]);
  for (const wrong of ['red', 'red = ', 'a = b = c', 'red = a\nRed = b'])
    expect(wiresFromText(wrong)).toBeNull();
});
