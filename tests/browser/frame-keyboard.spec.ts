import { addDays } from '../../shared/work/calendar.ts';
import { expect, openPage, takenIn, test, unique } from './frame-shop.ts';
import { textsOf } from './text-of.ts';

test('every room is two letters away, and a job’s pages too', async ({ page, desk, by }) => {
  const { code } = await takenIn(desk, by, unique('Keys One'));
  await openPage(page, '/office/about');
  await expect(page.getByRole('heading', { level: 1, name: 'About' })).toBeFocused();
  const go = async (letter: string, address: string) => {
    // A page that is still filling moves the focus to the field that is wanted next, and keys with it.
    await expect(async () => {
      await page.locator('h1').first().focus();
      await page.keyboard.press('g');
      await page.keyboard.press(letter);
      await expect(page).toHaveURL(new RegExp(`${address}$`), { timeout: 1_000 });
    }).toPass();
    await expect(page.locator('main h1').first()).toBeVisible();
  };
  await go('d', '/');
  await go('j', '/jobs');
  await go('c', '/customers');
  await go('s', '/spec-book');
  await go('u', '/gauges');
  await go('p', '/parts');
  await go('o', '/office');
  await openPage(page, `/job/${code}`);
  await expect(page).toHaveTitle(`Overview ${code} – Tappet`);
  await go('b', `/job/${code}/bench`);
  await go('t', `/job/${code}/till`);
  await go('h', `/job/${code}/handover`);
  await go('v', `/job/${code}`);
});

test('a job is found and opened from the list without the mouse', async ({ page, desk, by }) => {
  const name = unique('Keys Two');
  const { code } = await takenIn(desk, by, name);
  await openPage(page, '/');
  await page.keyboard.press('F4');
  const filter = page.getByRole('textbox', { name: 'Narrow the list' });
  await expect(filter).toBeFocused();
  await page.keyboard.type(name.toUpperCase());
  await expect(page.getByRole('status')).toHaveText('1 job');
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('link', { name: code })).toBeFocused();
  await page.keyboard.press('ArrowUp');
  await expect(filter).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(new RegExp(`/job/${code}$`));
});

test('the address of a list keeps its filter', async ({ page, desk, by }) => {
  const name = unique('Keys Three');
  const { code, jobId } = await takenIn(desk, by, name);
  await openPage(page, `/jobs?text=${encodeURIComponent(name)}&show=customer`);
  await expect(page.getByText('No job of this list answers to that')).toBeVisible();
  await desk.counter.moveJob({ by, jobId, to: 'customer-to-decide', note: 'Rebuild or replace' });
  await page.reload();
  await expect(page.getByRole('textbox', { name: 'Narrow the list' })).toHaveValue(name);
  await expect(page.getByRole('link', { name: code })).toBeVisible();
});

test('the keys are listed on a sheet, and letters in a field are letters', async ({ page, by }) => {
  expect(by).toBeTruthy();
  await openPage(page, '/customers');
  await page.keyboard.type('g?');
  await expect(page.getByRole('textbox', { name: 'Narrow the list' })).toHaveValue('g?');
  await page.getByRole('heading', { level: 1 }).focus();
  await page.keyboard.press('?');
  const sheet = page.getByRole('dialog', { name: 'Keys' });
  await expect(sheet.getByText('Take a machine in')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(sheet).toBeHidden();
});

test('who is at the station changes by one key, and stays', async ({ page, desk, by }) => {
  const name = unique('Aa Bo');
  const person = await desk.office.addStaff({ by, name, role: 'bench' });
  await openPage(page, '/');
  await page.keyboard.press('F8');
  const people = page.getByRole('dialog').getByRole('listitem');
  const place = (await textsOf(people, name)).findIndex((text) => text.includes(name)) + 1;
  expect(place).toBeLessThanOrEqual(9);
  await page.keyboard.press(String(place));
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(page.getByRole('button', { name: `${name} at this station` })).toBeVisible();
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem('tappet.station')))
    .toBe(person.id);
});

test('a job is moved with the keyboard, and a reason is asked for', async ({ page, desk, by }) => {
  const { code } = await takenIn(desk, by, unique('Keys Four'));
  await openPage(page, `/job/${code}`);
  await page.getByRole('button', { name: 'Move', exact: true }).press('Enter');
  await page.getByRole('menuitem', { name: 'Stopped' }).press('Enter');
  const reason = page.getByRole('textbox', { name: 'Why the work stops' });
  await expect(reason).toBeFocused();
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('alert')).toContainText('needs a reason');
  await page.keyboard.type('Hole in the block');
  await page.keyboard.press('Control+Enter');
  const header = page.getByRole('region', { name: `Job ${code}` });
  await expect(header).toContainText('Stopped');
  await expect(header).toContainText('Hole in the block');
});

test('the day shows what is promised and what is late by its date', async ({ page, desk, by }) => {
  const { today } = await desk.office.about({});
  const due = unique('Due today');
  const soon = unique('Due soon');
  await takenIn(desk, by, due, today);
  await takenIn(desk, by, soon, addDays(today, 3));
  await openPage(page, '/');
  await expect(page.getByRole('region', { name: 'Promised today' })).toContainText(due);
  await expect(page.getByRole('region', { name: 'Promised soon' })).toContainText(soon);
  await page.getByRole('region', { name: 'Promised today' }).getByText(due).click();
  await expect(page.getByRole('link', { name: due })).toBeVisible();
});
