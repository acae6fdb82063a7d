import { expect, test } from 'vitest';
import { datesWritten } from './dates-in-words.ts';

const day = (iso: string) => `<${iso}>`;

test('dates in a remark are written as the shop writes them', () => {
  expect(datesWritten('calibration was due 2026-10-17; looked at 2026-11-02.', day)).toBe(
    'calibration was due <2026-10-17>; looked at <2026-11-02>.',
  );
});

test('what only looks like a date is left alone', () => {
  expect(datesWritten('part 12026-10-17, E-2026-10-17-1, 2026-1-7', day)).toBe(
    'part 12026-10-17, E-2026-10-17-1, 2026-1-7',
  );
});
