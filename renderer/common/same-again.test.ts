import { expect, test } from 'vitest';
import { sameAgainGuard } from './same-again.ts';

test('the same input is not sent twice while it is under way, nor by the second of two clicks', () => {
  let now = 0;
  const guard = sameAgainGuard(() => now);
  expect(guard.admits({ amount: 5_000 })).toBe(true);
  expect(guard.admits({ amount: 5_000 })).toBe(false);
  guard.done();
  now = 300;
  expect(guard.admits({ amount: 5_000 })).toBe(false);
  now = 1_200;
  expect(guard.admits({ amount: 5_000 })).toBe(true);
});

test('another input is another wish, and a refused one may be tried again at once', () => {
  const guard = sameAgainGuard(() => 0);
  expect(guard.admits({ text: '0.3' })).toBe(true);
  expect(guard.admits({ text: '0.31' })).toBe(true);
  guard.refused();
  expect(guard.admits({ text: '0.31' })).toBe(true);
});
