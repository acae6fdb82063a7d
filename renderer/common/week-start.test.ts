import { expect, test } from 'vitest';
import { weekStart } from './week-start.ts';

// Unicode CLDR, supplemental weekData: firstDay by territory.
test('a week begins with Sunday in the United States, with Monday in Poland', () => {
  expect(weekStart('en-US')).toBe(0);
  expect(weekStart('pl-PL')).toBe(1);
  expect(weekStart('ar-EG')).toBe(6);
});
