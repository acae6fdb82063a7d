import { looksRight } from './faultless.ts';
import { expect, test } from './frame-shop.ts';
import { sessionCookieFrom, startServer } from './server.ts';

test('a new shop opens with two names, and its day is empty', async ({ openContext }) => {
  const server = await startServer('empty');
  try {
    const { name, value } = await sessionCookieFrom(server.address);
    const context = await openContext({
      baseURL: server.origin,
      viewport: { width: 1280, height: 800 },
      locale: 'en-GB',
      timezoneId: 'Europe/London',
    });
    await context.addCookies([{ name, value, url: server.origin }]);
    const page = await context.newPage();
    await page.goto('/');
    await expect(page.getByRole('heading', { level: 1, name: 'Open the shop' })).toBeVisible();
    await expect(page.getByRole('combobox', { name: 'Currency' })).toHaveValue('GBP');
    await looksRight(page);

    await expect(page.getByRole('textbox', { name: 'Name of the shop' })).toBeFocused();
    await page.keyboard.type('Žluťák & Sons');
    await page.keyboard.press('Tab');
    await page.keyboard.type('Ela Žluťáková');
    // A window that closes loses nothing.
    await page.reload();
    await expect(page.getByRole('textbox', { name: 'Your name' })).toHaveValue('Ela Žluťáková');
    await page.getByRole('combobox', { name: 'Time zone' }).fill('Europe/Nowhere');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('alert')).toContainText('Mend the fields named');
    await expect(page.getByText('That is not a time zone').first()).toBeVisible();
    await page.getByRole('combobox', { name: 'Time zone' }).fill('Europe/London');
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Open the shop' }).click();

    await expect(page.getByText('No machine is here')).toBeVisible();
    await expect(page.getByRole('navigation', { name: 'Rooms' })).toContainText('Žluťák & Sons');
    await expect(page.getByRole('button', { name: 'Ela Žluťáková at this station' })).toBeVisible();
    await looksRight(page);
  } finally {
    await server.stop();
  }
});
