import fc from 'fast-check';
import { expect, test } from 'vitest';
import { billedAgainstIssued } from './billed-against-issued.ts';

/** `old` was superseded by `new`; every other part stands for itself. */
const chainOf = (partId: string) =>
  partId === 'old' || partId === 'new' ? ['old', 'new'] : [partId];

const against = (
  billed: Record<string, number>,
  used: Record<string, number>,
  elsewhere: Record<string, number> = {},
) => {
  const map = (of: Record<string, number>) => new Map(Object.entries(of));
  const { notIssued, notBilled } = billedAgainstIssued({
    billed: map(billed),
    used: map(used),
    elsewhere: map(elsewhere),
    chainOf,
  });
  return [Object.fromEntries(notIssued), Object.fromEntries(notBilled)];
};

test('what is billed and still on the shelf, and what went to the job and is not billed', () => {
  expect(against({ rings: 1_000, gasket: 1_000 }, { gasket: 1_000, plug: 1_000 })).toEqual([
    { rings: 1_000 },
    { plug: 1_000 },
  ]);
});

test('a part that took the place of the billed one makes up for it', () => {
  expect(against({ old: 2_000 }, { new: 2_000 })).toEqual([{}, {}]);
  expect(against({ old: 1_000, new: 1_000 }, { new: 3_000 })).toEqual([{}, { new: 1_000 }]);
  expect(against({ old: 1_000, new: 2_000 }, { new: 1_000 })).toEqual([
    { old: 1_000, new: 1_000 },
    {},
  ]);
});

test('what came from elsewhere is short no more, and what is issued besides is not billed twice', () => {
  expect(against({ rings: 2_000 }, {}, { rings: 1_000 })).toEqual([{ rings: 1_000 }, {}]);
  expect(against({ rings: 1_000 }, { rings: 1_000 }, { rings: 1_000 })).toEqual([{}, {}]);
});

const bag = fc.dictionary(fc.constantFrom('old', 'new', 'plug', 'coil'), fc.nat(5_000));
const sum = (of: Record<string, number> | undefined) =>
  Object.values(of ?? {}).reduce((a, b) => a + b, 0);

test('of what is billed and what is used, no thousandth is lost and none is told twice', () => {
  fc.assert(
    fc.property(bag, bag, (billed, used) => {
      const [notIssued, notBilled] = against(billed, used);
      expect(sum(notIssued) - sum(notBilled)).toBe(sum(billed) - sum(used));
      // Never both ways round within parts that took each other's place.
      for (const chain of [['old', 'new'], ['plug'], ['coil']]) {
        const of = (all: Record<string, number> | undefined) =>
          chain.reduce((total, partId) => total + (all?.[partId] ?? 0), 0);
        expect(Math.min(of(notIssued), of(notBilled))).toBe(0);
      }
    }),
  );
});
