import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { DEMO_SHOP } from '../../db/demo/shop.ts';
import { openStore } from '../../db/store.ts';
import { deskClient } from '../../electron/command/demo-shop/client.ts';
import { happeningsOf } from '../../electron/command/demo-shop/happenings.ts';
import type { OpenShop } from '../../electron/command/demo-shop/set-up.ts';
import { StoryClock } from '../../electron/command/demo-shop/story-clock.ts';
import { fillDemoShop } from '../../electron/command/fill-demo-shop.ts';
import { undisturbed } from '../../electron/desk/index.ts';

/** North and south of the equator, with a half hour, and with no change of clocks at all. */
const ZONES = ['America/Chicago', 'Australia/Adelaide', 'Europe/Berlin', 'Asia/Kolkata'] as const;
const TIMES = ['00:02', '09:30', '23:58'] as const;

const everything = process.env.MOMENTS === 'all';

const anyone = { get: () => 'somebody' } as unknown as ReadonlyMap<never, string>;

/** What happened, told at a moment, without a shop for it to happen in. */
function toldAt(now: Temporal.ZonedDateTime) {
  const clock = new StoryClock(new Date(now.epochMilliseconds), now.timeZoneId, 246);
  const desk = deskClient({} as Parameters<typeof deskClient>[0]);
  const shop: OpenShop = {
    desk,
    clock,
    staff: anyone,
    engines: anyone,
    gauges: anyone,
    parts: anyone,
    suppliers: anyone,
  };
  const happenings = happeningsOf(shop, { customers: new Map(), machines: new Map() });
  return happenings.map(({ at }) => {
    const wall = Temporal.Instant.fromEpochMilliseconds(at.getTime()).toZonedDateTimeISO(
      now.timeZoneId,
    );
    const days = now.toPlainDate().until(wall.toPlainDate()).days;
    return `${days} ${wall.toPlainTime().toString()}`;
  });
}

describe('the story of the invented shop', () => {
  const at = (date: string, time: string, zone: string) =>
    Temporal.PlainDateTime.from(`${date}T${time}`).toZonedDateTime(zone);
  const reference = toldAt(at('2026-11-25', '10:00', 'America/Chicago'));

  // All of it with MOMENTS=all: 29 February 2028 and the changes of each zone's clocks are among the days.
  // Else every 61st day, which comes by each day of the week.
  const step = everything ? 1 : 61;
  test.each(ZONES)(
    'is the same whatever day of 500 it is told on, in %s',
    (zone) => {
      const first = Temporal.PlainDate.from('2027-01-01');
      for (let day = 0; day < 500; day += step)
        for (const time of everything ? TIMES : TIMES.slice(day % 3, (day % 3) + 1)) {
          const told = at(first.add({ days: day }).toString(), time, zone);
          expect(toldAt(told), told.toString()).toEqual(reference);
        }
    },
    everything ? 600_000 : undefined,
  );
});

/** Moments at which the whole shop is filled: MOMENTS=all takes some minutes, and a few are always. */
const MOMENTS = {
  'a Monday, just before midnight': '2026-11-30T23:58',
  'a Monday morning': '2026-11-30T08:00',
  'a month’s last evening': '2026-10-31T23:58',
  'the hour that comes twice': '2026-11-01T01:30',
  'the hour that is left out': '2027-03-14T03:00',
  'New Year’s morning': '2027-01-01T00:01',
  'leap day': '2028-02-29T12:00',
  Tuesday: '2026-12-01T07:00',
  Wednesday: '2026-12-02T12:15',
  Thursday: '2026-12-03T16:45',
  Friday: '2026-12-04T18:30',
  Saturday: '2026-12-05T10:20',
  Sunday: '2026-12-06T21:00',
};
const ALWAYS = ['a Monday, just before midnight'];
const chosen = Object.entries(MOMENTS).filter(([name]) => everything || ALWAYS.includes(name));

test.each(chosen)(
  'the invented shop opens on %s',
  async (_, moment) => {
    const folder = mkdtempSync(join(tmpdir(), 'tappet-demo-day-'));
    const store = openStore(folder, { careless: true });
    const now = Temporal.PlainDateTime.from(moment).toZonedDateTime(DEMO_SHOP.timeZone);
    const context = {
      store,
      now: () => new Date(now.epochMilliseconds),
      drawPaper: () => new TextEncoder().encode('%PDF-'),
      program: { version: '0' },
      alone: undisturbed,
    };
    try {
      await fillDemoShop(context);
      const desk = deskClient(context);
      expect(await desk.counter.jobs({ text: '' })).toHaveLength(40);
      expect(await desk.office.verifyJournal({})).toMatchObject({ intact: true });
    } finally {
      store.close();
      rmSync(folder, { recursive: true, force: true });
    }
  },
  120_000,
);
