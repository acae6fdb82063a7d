import { expect, it } from 'vitest';
import { KINDS, kindsLike } from './kinds-like.ts';

it.each([
  ['ti', ['tiller']],
  ['MO', ['mower', 'riding-mower']],
  ['s', ['snow-thrower', 'log-splitter']],
  ['ch', ['chipper', 'chainsaw']],
  ['lawn', ['mower', 'riding-mower']],
  ['snowb', ['snow-thrower']],
  ['zz', []],
])('%s', (typed, kinds) => {
  expect(kindsLike(KINDS, typed).map(({ value }) => value)).toEqual(kinds);
});
