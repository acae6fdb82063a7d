import { expect, test } from 'vitest';
import { coreStanding } from './cores.ts';

test('cores are here, away, credited or refused', () => {
  const standing = coreStanding([
    { kind: 'taken-in', quantity: 5_000, amount: 0 },
    { kind: 'sent-back', quantity: 3_000, amount: 4_500 },
    { kind: 'credited', quantity: 1_000, amount: 1_400 },
    { kind: 'refused', quantity: 1_000, amount: 0 },
  ]);
  expect(standing).toEqual({ here: 2_000, away: 1_000, expected: 1_500, credited: 1_400 });
});

test('when the last one is settled nothing is expected any more, whatever was credited', () => {
  const sent = [
    { kind: 'taken-in' as const, quantity: 3_000, amount: 0 },
    { kind: 'sent-back' as const, quantity: 3_000, amount: 1_000 },
  ];
  const one = { kind: 'credited' as const, quantity: 1_000, amount: 100 };
  expect(coreStanding([...sent, one, one, one])).toEqual({
    here: 0,
    away: 0,
    expected: 0,
    credited: 300,
  });
});
