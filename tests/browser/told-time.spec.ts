import { expect, openPage, takenIn, test, unique } from './frame-shop.ts';
import { toldNow } from './told-time.ts';

test.describe.configure({ mode: 'serial' });

test('desk and page have the told time', async ({ page, desk, by }) => {
  const before = toldNow().getTime();
  await takenIn(desk, by, unique('Told'));
  await openPage(page, '/');
  const seen = await page.evaluate(() => ({
    now: Date.now(),
    newest: new Date().toISOString(),
    given: new Date(2024, 1, 29).getDate(),
    isDate: new Date() instanceof Date,
  }));
  const after = toldNow().getTime();
  expect(seen).toMatchObject({ given: 29, isDate: true });
  // The clocks of a page and of the desk may differ by a little.
  for (const time of [seen.now, Date.parse(seen.newest)]) {
    expect(time).toBeGreaterThan(before - 5_000);
    expect(time).toBeLessThan(after + 5_000);
  }
  const [entry] = await desk.office.journal({ limit: 1 });
  expect(Date.parse(entry?.at ?? '')).toBeGreaterThan(before - 5_000);
  expect(Date.parse(entry?.at ?? '')).toBeLessThan(after + 5_000);
  await page.evaluate(() => window.localStorage.setItem('left', 'behind'));
});

test('what the test before kept in the browser is gone', async ({ page }) => {
  await page.goto('/');
  await expect.poll(() => page.evaluate(() => window.localStorage.getItem('left'))).toBeNull();
});
