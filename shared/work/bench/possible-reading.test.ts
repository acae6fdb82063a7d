import { expect, test } from 'vitest';
import { MEASURED_FEATURES } from '../features.ts';
import { whyImpossible } from './possible-reading.ts';

test('a size is more than nothing, a gap may be nothing, a proud piston is below the deck of zero', () => {
  expect(whyImpossible('bore', 0)).toMatch(/more than 0/);
  expect(whyImpossible('bore', -2.75)).toMatch(/less than nothing/);
  expect(whyImpossible('coil-air-gap', 0)).toBeNull();
  expect(whyImpossible('coil-air-gap', -0.3)).toMatch(/less than nothing/);
  expect(whyImpossible('deck-clearance', -0.2)).toBeNull();
});

test('every feature takes a plain positive reading', () => {
  for (const feature of MEASURED_FEATURES) expect(whyImpossible(feature, 1)).toBeNull();
});
