import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BoltGroup,
  isTurn,
  nearestMark,
  outOfTurn,
  type Pull,
  ROUND_BEGUN,
  torqueWalk,
} from './torque-walk.ts';

const four: BoltGroup = { count: 4, pattern: 'cross', stages: [0.5, 1] };
const pull = (stage: number, bolt: number, round = 1): Pull => ({ stage, bolt, round });

const anyGroup = fc.record({
  count: fc.integer({ min: 1, max: 24 }),
  pattern: fc.constantFrom('cross' as const, 'spiral' as const, 'in-line' as const),
  stages: fc.constantFrom([1], [0.5, 1], [0.3, 0.6, 1], [0.2, 0.4, 0.6, 0.8, 1]),
});

/** Every pull in its turn, up to so many. */
function walked(group: BoltGroup, most: number, round = 1): Pull[] {
  const pulls: Pull[] = [];
  while (pulls.length < most) {
    const { next } = torqueWalk(group, pulls);
    if (next === null) break;
    pulls.push({ ...next, round });
  }
  return pulls;
}

describe('the walk around the bolts', () => {
  test('four bolts in a ring: the one opposite next, every stage once round', () => {
    expect(walked(four, 99).map(({ stage, bolt }) => `${stage}.${bolt}`)).toEqual([
      '1.1',
      '1.3',
      '1.2',
      '1.4',
      '2.1',
      '2.3',
      '2.2',
      '2.4',
    ]);
  });

  test('whoever follows it pulls every bolt to every stage once, stages in order', () => {
    fc.assert(
      fc.property(anyGroup, (group) => {
        const pulls = walked(group, 1_000);
        expect(pulls).toHaveLength(group.count * group.stages.length);
        expect(new Set(pulls.map(({ stage, bolt }) => `${stage} ${bolt}`)).size).toBe(pulls.length);
        expect(pulls.map(({ stage }) => stage)).toEqual(
          pulls.map(({ stage }) => stage).toSorted((a, b) => a - b),
        );
        expect(torqueWalk(group, pulls)).toMatchObject({ next: null, done: pulls.length });
        expect(outOfTurn(group, pulls)).toEqual([]);
      }),
    );
  });

  test('interrupted anywhere, it goes on with the very pull that was due', () => {
    fc.assert(
      fc.property(anyGroup, fc.nat(200), (group, stop) => {
        const whole = walked(group, 1_000);
        const before = whole.slice(0, stop);
        const due = whole[before.length];
        expect(torqueWalk(group, before).next).toEqual(
          due === undefined ? null : { stage: due.stage, bolt: due.bolt },
        );
      }),
    );
  });

  test('begun anew, the round before counts for nothing', () => {
    const pulls = [...walked(four, 5), pull(0, 1, 2)];
    expect(torqueWalk(four, pulls)).toMatchObject({
      round: 2,
      done: 0,
      next: { stage: 1, bolt: 1 },
    });
    expect(torqueWalk(four, [...pulls, pull(1, 1, 2)]).next).toEqual({ stage: 1, bolt: 3 });
  });

  test('a bolt out of turn is told, and the one that was due still is', () => {
    const pulls = [pull(1, 1), pull(1, 4)];
    expect(torqueWalk(four, pulls).next).toEqual({ stage: 1, bolt: 3 });
    expect(outOfTurn(four, pulls)).toEqual([pull(1, 4)]);
    expect(isTurn(torqueWalk(four, pulls), { stage: 1, bolt: 2 })).toBe(false);
    // Bolt 4 has had its stage: after 3 and 2 the next stage begins.
    expect(torqueWalk(four, [...pulls, pull(1, 3), pull(1, 2)]).next).toEqual({
      stage: 2,
      bolt: 1,
    });
  });

  test('in any order that pulls every bolt, the walk ends', () => {
    fc.assert(
      fc.property(
        anyGroup.chain((group) =>
          fc.tuple(
            fc.constant(group),
            fc.shuffledSubarray(walked(group, 1_000), {
              minLength: group.count * group.stages.length,
            }),
          ),
        ),
        ([group, pulls]) => {
          expect(torqueWalk(group, pulls).next).toBeNull();
        },
      ),
    );
  });

  test('bolts that the group has no longer are passed over', () => {
    expect(torqueWalk(four, [pull(1, 9), pull(5, 1)])).toMatchObject({ done: 0 });
  });
});

describe('the mark on the wrench', () => {
  test('is the nearest, without dust from binary fractions', () => {
    expect(nearestMark(11.74, 0.5)).toBe(11.5);
    expect(nearestMark(0.72, 0.1)).toBe(0.7);
    expect(nearestMark(103, 5)).toBe(105);
  });

  test('lies within half a step and on the scale', () => {
    const steps = fc.constantFrom(0.1, 0.2, 0.25, 0.5, 1, 2, 5);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), steps, (wanted, step) => {
        const mark = nearestMark(wanted, step);
        expect(Math.abs(mark - wanted)).toBeLessThanOrEqual(step / 2 + 1e-9);
        expect(Math.abs(mark / step - Math.round(mark / step))).toBeLessThan(1e-9);
      }),
    );
  });

  test('a scale without steps is refused', () => {
    expect(() => nearestMark(10, 0)).toThrow(RangeError);
  });
});

test('out of turn is told of the latest round alone, its beginning left out', () => {
  const wrongFirst = [pull(1, 2), pull(1, 1)];
  expect(outOfTurn(four, wrongFirst)).toEqual([pull(1, 2)]);
  const anew = [...wrongFirst, pull(ROUND_BEGUN, 0, 2), pull(1, 1, 2), pull(1, 4, 2)];
  expect(outOfTurn(four, anew)).toEqual([pull(1, 4, 2)]);
  expect(torqueWalk(four, anew)).toMatchObject({ round: 2, done: 2, of: 8 });
});
