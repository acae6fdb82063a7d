import { expect, test } from 'vitest';
import { likelyReading } from './likely-reading.ts';

test.each([
  ['foot-inch', 190 / 12, 'N·m', '15.8'],
  ['foot-inch', 16 / 12, 'lbf·in', '1.33'],
  ['inch', 0.012 * 25.4, 'mm', '0.305'],
  ['inch', 2.6787 * 25.4, 'mm', '68.039'],
  ['inch', 0.3 / 25.4, 'in', '0.0118'],
  // The digits that were typed are what the gauge showed; only the point was misplaced.
  ['decimal', 0.3, 'mm', '0.3'],
  ['decimal', 0.025_41, 'mm', '0.02541'],
  ['decimal', 0.304_800_000_000_01, 'mm', '0.3048'],
] as const)('%s: %d %s is asked about as %s', (kind, likely, unit, text) => {
  expect(likelyReading({ kind, likely }, unit)).toBe(text);
});
