import { expect, test } from 'vitest';
import { isTypedName, signedWords } from './typed-name.ts';

test('a name without a drawn point is a typed one', () => {
  expect(isTypedName({ strokes: [] })).toBe(true);
  expect(isTypedName({ strokes: [[], []] })).toBe(true);
  expect(isTypedName({ strokes: [[], [{ x: 1, y: 2 }]] })).toBe(false);
});

test('a typed name says who entered it', () => {
  expect(signedWords({ name: 'Tess Wheeler', typedBy: null })).toBe('Tess Wheeler');
  expect(signedWords({ name: 'Tess Wheeler', typedBy: 'Wren Castellane' })).toBe(
    'Tess Wheeler, typed name, entered by Wren Castellane',
  );
});
