import { expect, test } from 'vitest';
import { REQUEST_KEY } from '../../../shared/request-key.ts';
import { giveKey, requestHeaders, unansweredKeys } from './request-keys.ts';

test('what is sent again keeps its key until it was answered', () => {
  const keys = unansweredKeys();
  const first = keys.keyFor({ amount: 100 });
  expect(keys.keyFor({ amount: 100 })).toBe(first);
  keys.answered();
  expect(keys.keyFor({ amount: 100 })).not.toBe(first);
});

test('what was changed in between is another call', () => {
  const keys = unansweredKeys();
  const first = keys.keyFor({ amount: 100 });
  const second = keys.keyFor({ amount: 200 });
  expect(second).not.toBe(first);
  expect(keys.keyFor({ amount: 100 })).not.toBe(first);
});

test('only the call that was given a key carries it', () => {
  const input = { amount: 100 };
  giveKey(input, 'the key');
  expect(requestHeaders({}, [], input)).toEqual({ [REQUEST_KEY]: 'the key' });
  expect(requestHeaders({}, [], { amount: 100 })).toEqual({});
  expect(requestHeaders({}, [], undefined)).toEqual({});
});
