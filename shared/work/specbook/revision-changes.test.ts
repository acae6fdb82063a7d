import { expect, test } from 'vitest';
import { changesBetween } from './revision-changes.ts';

const first = {
  low: '16',
  high: '18',
  aim: '',
  wearLimit: '',
  unit: 'lbf·ft',
  condition: 'dry',
  page: '22',
  source: { id: 'manual' },
  fastener: { diameter: 8, stages: [0.5, 1] },
} as const;

test('names what a revision changed, and nothing else', () => {
  expect(changesBetween(first, { ...first })).toEqual([]);
  expect(changesBetween(first, { ...first, high: '19', condition: 'oiled' })).toEqual([
    'high',
    'condition',
  ]);
  expect(
    changesBetween(first, {
      ...first,
      source: { id: 'bulletin' },
      fastener: { diameter: 8, stages: [0.5, 0.75, 1] },
    }),
  ).toEqual(['source', 'fastener']);
});
