import { expect, test } from 'vitest';
import { againstLimit } from './limit.ts';

test('a bill below, at and above the limit', () => {
  expect(againstLimit(25_000, 50_000)).toEqual({
    over: 0,
    room: 25_000,
    stands: 'within',
    within: 50,
    beyond: 0,
    mark: 100,
  });
  expect(againstLimit(50_000, 50_000)).toMatchObject({ over: 0, room: 0, within: 100, mark: 100 });
  expect(againstLimit(80_000, 60_000)).toEqual({
    over: 20_000,
    room: 0,
    stands: 'over',
    within: 75,
    beyond: 25,
    mark: 75,
  });
});

test('nothing approved and nothing billed', () => {
  expect(againstLimit(0, 0)).toEqual({
    over: 0,
    room: 0,
    stands: 'within',
    within: 0,
    beyond: 0,
    mark: 0,
  });
  expect(againstLimit(10_000, 0)).toMatchObject({ over: 10_000, within: 0, beyond: 100, mark: 0 });
});

test('a line without a price leaves it open whether the bill stays within', () => {
  expect(againstLimit(25_000, 50_000, 1).stands).toBe('unknown');
  expect(againstLimit(80_000, 60_000, 1).stands).toBe('over');
});
