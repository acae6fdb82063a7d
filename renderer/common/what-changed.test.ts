import { expect, test } from 'vitest';
import { mayHaveChanged } from './what-changed.ts';

/** Keys as the query utilities of oRPC form them. */
const staff = [['office', 'staff'], { input: {}, type: 'query' }];
const rules = [['till', 'rules'], { input: {}, type: 'query' }];
const day = [['counter', 'day'], { input: {}, type: 'query' }];

test('a reading may change the day, but neither staff nor rules', () => {
  const written = [['bench', 'record'], { type: 'mutation' }];
  expect(mayHaveChanged(day, written)).toBe(true);
  expect(mayHaveChanged(staff, written)).toBe(false);
  expect(mayHaveChanged(rules, written)).toBe(false);
});

test('the room that sets them may change them', () => {
  expect(mayHaveChanged(staff, [['office', 'addStaff'], { type: 'mutation' }])).toBe(true);
  expect(mayHaveChanged(rules, [['till', 'setRules'], { type: 'mutation' }])).toBe(true);
});

test('a write that nobody knows may have changed everything', () => {
  expect(mayHaveChanged(staff, undefined)).toBe(true);
});
