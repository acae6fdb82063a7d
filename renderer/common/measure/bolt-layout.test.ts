import { expect, test } from 'vitest';
import { boltRadius, boltSpots } from './bolt-layout.ts';

test('every bolt is drawn once, with its turn, and no two on one spot', () => {
  for (const [count, pattern] of [
    [4, 'cross'],
    [5, 'cross'],
    [8, 'spiral'],
    [7, 'spiral'],
    [3, 'in-line'],
  ] as const) {
    const spots = boltSpots({ count, pattern });
    expect(spots.map(({ bolt }) => bolt)).toEqual(Array.from({ length: count }, (_, i) => i + 1));
    expect(new Set(spots.map(({ turn }) => turn)).size).toBe(count);
    expect(new Set(spots.map(({ x, y }) => `${x.toFixed(3)} ${y.toFixed(3)}`)).size).toBe(count);
  }
});

test('after the first bolt of a ring comes the one opposite', () => {
  const spots = boltSpots({ count: 4, pattern: 'cross' });
  const [first, second] = [1, 2].map((wanted) => spots.find(({ turn }) => turn === wanted));
  if (!first || !second) throw new Error('There are no turns.');
  expect(first.x + second.x).toBeCloseTo(220, 9);
  expect(first.y + second.y).toBeCloseTo(208, 9);
});

test('no bolt touches its neighbour', () => {
  for (const pattern of ['cross', 'spiral', 'in-line'] as const)
    for (let count = 2; count <= 24; count += 1) {
      const spots = boltSpots({ count, pattern });
      const nearest = Math.min(
        ...spots.flatMap((a) =>
          spots.filter((b) => b.bolt > a.bolt).map((b) => Math.hypot(a.x - b.x, a.y - b.y)),
        ),
      );
      expect(nearest).toBeGreaterThan(2 * boltRadius({ count, pattern }));
    }
});

test('an absurd count draws nothing', () => {
  for (const count of [0, -4, 2.5, 1000])
    expect(boltSpots({ count, pattern: 'cross' })).toEqual([]);
});
