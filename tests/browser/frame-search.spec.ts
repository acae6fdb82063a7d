import { expect, openPage, takenIn, test, unique } from './frame-shop.ts';

test('search finds a name in any alphabet, typed without its accents', async ({
  page,
  desk,
  by,
}) => {
  const names = ['Łucja Żółkiewska', 'Søren Ødegård', 'Ελένη Παπά', '山田 花子', 'גִּיל כהן'];
  const codes: string[] = [];
  for (const name of names) codes.push((await takenIn(desk, by, unique(name))).code);
  await openPage(page, '/');
  for (const [index, typed] of ['zolkiewska', 'soren odegard', 'ελενη', '山田', 'גיל'].entries()) {
    await page.keyboard.press('Control+k');
    const field = page.getByRole('combobox', { name: /^Search/ });
    await expect(field).toBeFocused();
    await field.fill(typed);
    const hit = page.getByRole('option', { name: new RegExp(codes[index] ?? 'none') });
    await expect(hit).toContainText(names[index] ?? '');
    await page.keyboard.press('Escape');
    await expect(field).toBeHidden();
  }
});

test('arrow keys choose, Enter opens, and each kind opens its own page', async ({
  page,
  desk,
  by,
}) => {
  const name = unique('Halla Brune');
  const { code, customerId } = await takenIn(desk, by, name);
  const part = await desk.parts.add({
    by,
    number: unique('HB'),
    description: `${name} kit`,
    price: 1_250,
  });
  await openPage(page, '/');
  const open = async (kind: string, address: string) => {
    await page.keyboard.press('Control+k');
    await page.getByRole('combobox', { name: /^Search/ }).fill(name);
    const wanted = page.getByRole('option').filter({ has: page.getByText(kind, { exact: true }) });
    await expect(wanted.first()).toBeVisible();
    for (let step = 0; step < 8; step++) {
      if ((await wanted.first().getAttribute('aria-selected')) === 'true') break;
      await page.keyboard.press('ArrowDown');
    }
    await page.keyboard.press('Enter');
    await expect(page).toHaveURL(new RegExp(`${address}$`));
  };
  await open('Job', `/job/${code}`);
  await open('Customer', `/customer/${customerId}`);
  await open('Machine', `/customer/${customerId}`);
  await open('Part', `/part/${part.id}`);
});

test('Enter before the answer is there opens the first of that answer', async ({
  page,
  desk,
  by,
}) => {
  const name = unique('Quickhand');
  const { code } = await takenIn(desk, by, name);
  await openPage(page, '/');
  await page.keyboard.press('Control+k');
  await expect(page.getByRole('combobox', { name: /^Search/ })).toBeFocused();
  await page.keyboard.type(name);
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(new RegExp(`/job/${code}$`));
  // The focus is on the page that was opened, so that Tab goes to its first action.
  await expect(page.getByRole('heading', { level: 1 })).toBeFocused();
});

test('a search without an answer says what to try', async ({ page, by }) => {
  expect(by).toBeTruthy();
  await openPage(page, '/');
  await page.getByRole('button', { name: /Search, or scan/ }).click();
  await page.getByRole('combobox', { name: /^Search/ }).fill('xqxqxq');
  await expect(page.getByRole('status')).toContainText('Try fewer letters');
});
