import { expect, test } from 'vitest';
import { partsUsed } from './parts-used.ts';

const chainOf = (partId: string) => (/^(old|new)$/.test(partId) ? ['old', 'new'] : [partId]);
const use = (issued: Record<string, number>, named: readonly string[], kits = 0) =>
  Object.fromEntries(
    partsUsed({
      issued: new Map(Object.entries(issued)),
      named: new Set(named),
      opened: [{ kitId: 'kit', opened: kits, pieces: [{ partId: 'gasket', quantity: 2_000 }] }],
      chainOf,
    }),
  );

test('a former part counts for the line of the current one, and both together', () => {
  expect(use({ old: 1_000, new: 500, bolt: 4_000 }, ['new'])).toEqual({ new: 1_500, bolt: 4_000 });
  expect(use({ old: 1_000 }, ['bolt'])).toEqual({ old: 1_000 });
});

test('the pieces of a kit on a line count as the kit, and only what is beyond them as pieces', () => {
  expect(use({ gasket: 3_000 }, ['kit'], 1_000)).toEqual({ kit: 1_000, gasket: 1_000 });
  expect(use({ gasket: 1_000 }, ['kit'], 1_000)).toEqual({ kit: 1_000 });
});

test('a kit that no line names counts by the pieces that the job was given', () => {
  expect(use({ gasket: 2_000 }, [], 1_000)).toEqual({ gasket: 2_000 });
});
