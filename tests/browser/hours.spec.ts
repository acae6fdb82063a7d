import { expect, type Page } from '@playwright/test';
import { looksRight } from './faultless.ts';
import { takeInJob, test } from './taxed-shop.ts';
import { inTheme } from './themes.ts';
import { toldNow } from './told-time.ts';

const looksWell = async (page: Page) => {
  await looksRight(page);
};

test('time is clocked, asked about when forgotten, corrected, and put on the bill', async ({
  page,
  taxed,
}) => {
  const { desk, by } = taxed;
  const first = await takeInJob(taxed);
  const second = await takeInJob(taxed, 'Odhran Vell');

  await page.goto(`/job/${first.code}`);
  await page.getByRole('button', { name: 'Clock on' }).click();
  await expect(page.getByRole('button', { name: /Clock off/ })).toBeVisible();
  await page.goto(`/job/${second.code}`);
  await expect(page.getByRole('link', { name: `Your clock runs on ${first.code}` })).toBeVisible();
  await page.getByRole('button', { name: 'Clock on' }).click();
  await expect(page.getByRole('dialog')).toContainText(first.code);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: /Clock off/ })).toBeVisible();

  // Two days ago, in the morning: whoever did that forgot to clock off.
  const [running] = await desk.till.runningClocks({});
  const [done] = (await desk.till.clockedOnJob({ jobId: first.jobId })).entries;
  expect(running?.jobId).toBe(second.jobId);
  if (running === undefined || done === undefined) return;
  await desk.till.strikeOutHours({ by, entryId: done.id, reason: 'Wrong tag' });
  const began = toldNow();
  began.setUTCDate(began.getUTCDate() - 2);
  began.setUTCHours(15, 0, 0, 0);
  const hour = Number(
    new Intl.DateTimeFormat('en-GB', { hour: '2-digit', timeZone: 'America/Chicago' }).format(
      began,
    ),
  );
  await desk.till.correctHours({
    by,
    entryId: running.id,
    jobId: running.jobId,
    startedAt: began.toISOString(),
    endedAt: null,
    reason: 'Since two days ago',
  });
  await page.reload();
  const question = page.getByRole('alert').filter({ hasText: 'When did you stop?' });
  await expect(question).toBeVisible();
  await inTheme(page, 'dark');
  await page.setViewportSize({ width: 900, height: 1200 });
  await looksWell(page);
  await inTheme(page, 'light');
  await page.setViewportSize({ width: 1280, height: 800 });
  await question.getByRole('textbox', { name: 'Stopped at' }).fill(`${hour + 1}:00`);
  await page.keyboard.press('Enter');
  await expect(question).toBeHidden();

  await page.goto(`/hours?span=day&on=${began.toISOString().slice(0, 10)}`);
  const entry = page.getByRole('listitem').filter({ hasText: second.code });
  await expect(entry).toContainText('1 h 00 min');
  await entry.getByRole('button', { name: /^Correct/ }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('textbox', { name: 'To' }).fill(`${hour + 1}:30`);
  await expect(dialog.getByRole('status')).toContainText('1 h 30 min');
  await dialog.getByRole('button', { name: 'Correct it' }).click();
  await expect(dialog.getByText('Say why in a few words.')).toBeVisible();
  await looksWell(page);
  await dialog.getByRole('textbox', { name: 'Reason' }).fill('It took longer');
  await page.keyboard.press('Enter');
  await expect(dialog).toBeHidden();
  await expect(entry).toContainText('1 h 30 min');
  await expect(entry).toContainText('Corrected');
  await looksWell(page);

  await page.goto(`/job/${second.code}/till`);
  await page.getByRole('button', { name: 'Put clocked time on the bill' }).click();
  await expect(page.getByRole('textbox', { name: 'Line 1, quantity' })).toHaveValue('1.5');
  await looksWell(page);
});
