import { expect, test } from 'vitest';
import { typedError } from './stated-error.ts';

test.each([
  ['4 %', { value: 4, inPerCent: true }],
  ['4%', { value: 4, inPerCent: true }],
  ['± 2,5 %', { value: 2.5, inPerCent: true }],
  ['3 percent', { value: 3, inPerCent: true }],
  ['0.005', { value: 0.005, inPerCent: false }],
  ['±0,02', { value: 0.02, inPerCent: false }],
  ['', null],
  ['%', null],
  ['-4 %', null],
  ['four', null],
])('an error typed as %j', (text, read) => {
  expect(typedError(text)).toEqual(read);
});
