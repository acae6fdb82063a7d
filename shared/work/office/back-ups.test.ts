import { expect, test } from 'vitest';
import {
  BACK_UP_ORIGINS,
  backUpFileName,
  DAILY_KEPT,
  dailyToDrop,
  readBackUpName,
} from './back-ups.ts';

const at = '2026-11-25T09:20:12.007Z';

test('the name of a back-up says when and why it was made', () => {
  for (const origin of BACK_UP_ORIGINS.filter((each) => each !== 'put-there'))
    expect(readBackUpName(backUpFileName({ at, origin }))).toEqual({ at, origin });
  expect(backUpFileName({ at, origin: 'by-hand' })).toBe('tappet-2026-11-25T09-20-12-007Z.db');
});

test.each([
  'tappet.db',
  'copy of tappet-2026-11-25T09-20-12-007Z.db',
  'tappet-2026-11-25T09-20-12-007Z-other.db',
  'tappet-2026-11-25T09-20-12-007Z-put-there.db',
  'tappet-2026-13-45T09-20-12-007Z.db',
])('%s is none of our names', (name) => {
  expect(readBackUpName(name)).toBeNull();
});

test('only daily ones are dropped, the oldest first, and as many are kept as it is said', () => {
  const days = Array.from({ length: 20 }, (_, day) =>
    backUpFileName({
      at: `2026-11-${String(day + 1).padStart(2, '0')}T08:00:00.000Z`,
      origin: 'daily',
    }),
  );
  const others = [
    backUpFileName({ at: '2020-01-01T08:00:00.000Z', origin: 'by-hand' }),
    backUpFileName({ at: '2020-01-01T08:00:00.000Z', origin: 'before-bringing-back' }),
    'usb.db',
  ];
  expect(dailyToDrop([...days, ...others]).sort()).toEqual(days.slice(0, 20 - DAILY_KEPT));
  expect(dailyToDrop(days.slice(0, DAILY_KEPT))).toEqual([]);
});
