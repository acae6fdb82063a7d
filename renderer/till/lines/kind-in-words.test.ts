import { expect, it } from 'vitest';
import { kindInWords } from './kind-in-words.ts';

it.each([
  ['Strip, build and test', 'labour'],
  ['strip', 'labour'],
  ['Fit new rings', 'labour'],
  ['Fitting kit', null],
  ['Set of gaskets', null],
  ['Stripped bolt kit', null],
  ['Disposal of old oil', 'fee'],
  ['Ring set', null],
  ['', null],
] as const)('%s', (description, kind) => {
  expect(kindInWords(description)).toBe(kind);
});
