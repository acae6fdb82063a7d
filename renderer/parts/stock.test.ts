import { expect, test } from 'vitest';
import { afterMovement, shelfLevel } from './stock.ts';

test('a shelf is low at its reorder point, not only below it', () => {
  const levels = [0, 1_000, 4_000, 4_001].map((onHand) =>
    shelfLevel({ onHand, reorderPoint: 4_000 }),
  );
  expect(levels).toEqual(['none-left', 'low', 'low', 'enough']);
  expect(shelfLevel({ onHand: 1_000, reorderPoint: 0 })).toBe('enough');
  expect(shelfLevel({ onHand: 0, reorderPoint: 0 })).toBe('none-left');
});

test('what is on the shelf after a movement', () => {
  const kinds = ['received', 'issued', 'returned', 'scrapped', 'counted'] as const;
  expect(kinds.map((kind) => afterMovement(kind, 5_000, 2_000))).toEqual([
    7_000, 3_000, 7_000, 3_000, 2_000,
  ]);
});
