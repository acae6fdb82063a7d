import { expect, test } from 'vitest';
import { StoryClock } from '../../electron/command/demo-shop/story-clock.ts';

const ZONE = 'America/Chicago';

/** A Wednesday, ten in the morning where the shop is. */
const clock = () => new StoryClock(new Date('2026-11-25T16:00:00Z'), ZONE, 30);

test('keeps the distance between two days, on Sundays and across month ends', () => {
  expect(clock().date(-3)).toBe('2026-11-22');
  expect(clock().date(-4)).toBe('2026-11-21');
  expect(clock().date(0)).toBe('2026-11-25');
  expect(clock().date(6)).toBe('2026-12-01');
});

test('shows the shop’s wall, across the change of its clocks', () => {
  // 1 November 2026 ends daylight saving time there: UTC-5 before it, UTC-6 after it.
  expect(clock().instant(-26, '09:10').toISOString()).toBe('2026-10-30T14:10:00.000Z');
  expect(clock().instant(-22, '09:10').toISOString()).toBe('2026-11-03T15:10:00.000Z');
});

test('goes forward only, a little at each look, and never past the real clock', () => {
  const story = clock();
  story.goTo(story.instant(-2, '09:00'), 60);
  expect(story.now().toISOString()).toBe('2026-11-23T15:01:00.000Z');
  story.goTo(story.instant(-5, '09:00'), 60);
  expect(story.now().toISOString()).toBe('2026-11-23T15:02:00.000Z');
  story.goTo(story.instant(5, '09:00'));
  expect(story.now().toISOString()).toBe('2026-11-25T16:00:00.000Z');
});
