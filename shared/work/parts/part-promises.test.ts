import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Claim, promiseChanges } from './part-promises.ts';

const claim = (jobId: string, open: number, promised: Record<string, number> = {}): Claim => ({
  jobId,
  open,
  named: ['new'],
  promised: new Map(Object.entries(promised)),
});
const shelf = (partId: string, onHand: number) => ({ partId, onHand });

describe('what is there goes to whoever comes first', () => {
  test('the first job has all that it needs, the second what is left', () => {
    expect(promiseChanges([shelf('new', 3)], [claim('a', 2), claim('b', 4)])).toEqual([
      { partId: 'new', jobId: 'b', change: 1 },
      { partId: 'new', jobId: 'a', change: 2 },
    ]);
  });

  test('what is promised already stays with the job that has it', () => {
    expect(promiseChanges([shelf('new', 2)], [claim('a', 2), claim('b', 2, { new: 2 })])).toEqual(
      [],
    );
  });

  test('a job that needs less gives back, and the next one gets it', () => {
    expect(promiseChanges([shelf('new', 2)], [claim('a', 0, { new: 2 }), claim('b', 1)])).toEqual([
      { partId: 'new', jobId: 'a', change: -2 },
      { partId: 'new', jobId: 'b', change: 1 },
    ]);
  });

  test('a shelf that holds fewer than it promised takes back from the last', () => {
    const claims = [claim('a', 2, { new: 2 }), claim('b', 2, { new: 2 })];
    expect(promiseChanges([shelf('new', 3)], claims)).toEqual([
      { partId: 'new', jobId: 'b', change: -1 },
    ]);
    expect(promiseChanges([shelf('new', -1)], claims)).toEqual([
      { partId: 'new', jobId: 'a', change: -2 },
      { partId: 'new', jobId: 'b', change: -2 },
    ]);
  });
});

describe('a part and the one before it', () => {
  test('the part that the line names comes first, then the former one', () => {
    const changes = promiseChanges([shelf('old', 5), shelf('new', 1)], [claim('a', 3)]);
    expect(changes).toEqual([
      { partId: 'new', jobId: 'a', change: 1 },
      { partId: 'old', jobId: 'a', change: 2 },
    ]);
  });

  test('of too much, the former one goes back first', () => {
    const held = [claim('a', 2, { old: 2, new: 1 })];
    expect(promiseChanges([shelf('old', 5), shelf('new', 1)], held)).toEqual([
      { partId: 'old', jobId: 'a', change: -1 },
    ]);
  });
});

test('promises are within the need and within the shelf, nothing lies idle, and a second look changes nothing', () => {
  const amount = fc.integer({ min: 0, max: 6 });
  const claims = fc.array(
    fc.record({ open: amount, old: amount, new: amount, named: fc.constantFrom('old', 'new') }),
    { maxLength: 5 },
  );
  const onHand = fc.integer({ min: -3, max: 12 });
  fc.assert(
    fc.property(claims, onHand, onHand, (drawn, old, current) => {
      const shelves = [shelf('old', old), shelf('new', current)];
      const before: Claim[] = drawn.map(({ open, named, ...promised }, index) => ({
        jobId: String(index),
        open,
        named: [named],
        promised: new Map(Object.entries(promised)),
      }));
      const changes = promiseChanges(shelves, before);
      const after = before.map((each) => ({
        ...each,
        promised: new Map(
          shelves.map(({ partId }) => [
            partId,
            (each.promised.get(partId) ?? 0) +
              (changes.find((one) => one.partId === partId && one.jobId === each.jobId)?.change ??
                0),
          ]),
        ),
      }));
      const held = (each: Claim) => [...each.promised.values()].reduce((a, b) => a + b, 0);
      for (const each of after) {
        expect(held(each)).toBeLessThanOrEqual(each.open);
        for (const promised of each.promised.values()) expect(promised).toBeGreaterThanOrEqual(0);
      }
      const left = shelves.map(({ partId, onHand: there }) => {
        const promised = after.reduce((sum, each) => sum + (each.promised.get(partId) ?? 0), 0);
        expect(promised).toBeLessThanOrEqual(Math.max(0, there));
        return Math.max(0, there) - promised;
      });
      const lacking = after.reduce((sum, each) => sum + each.open - held(each), 0);
      expect(
        Math.min(
          lacking,
          left.reduce((a, b) => a + b),
        ),
      ).toBe(0);
      expect(promiseChanges(shelves, after)).toEqual([]);
    }),
  );
});
