import { looksRight } from './faultless.ts';
import { expect, openPage, takenIn, test, unique } from './frame-shop.ts';

// Each theme and each size once: what one of them would hide in the other two ways is looked at by eye.
const WAYS = [
  { colorScheme: 'light', viewport: { width: 1280, height: 800 } },
  { colorScheme: 'dark', viewport: { width: 900, height: 1200 } },
] as const;

for (const { colorScheme, viewport } of WAYS) {
  const how = `in ${colorScheme} at ${viewport.width}`;
  test.describe(how, () => {
    test.use({ viewport, colorScheme });

    test(`the counter reads well ${how}`, async ({ page, desk, by }) => {
      const { today } = await desk.office.about({});
      const { code, customerId } = await takenIn(desk, by, unique('Looks'), today);
      const addresses = ['/', '/jobs', '/customers', `/customer/${customerId}`, `/job/${code}`];
      for (const address of addresses) {
        await openPage(page, address);
        await expect(page.getByRole('status', { name: 'One moment' })).toHaveCount(0);
        await looksRight(page);
      }
      await page.getByRole('button', { name: 'Move', exact: true }).click();
      await expect(page.getByRole('menuitem').first()).toBeVisible();
      await looksRight(page);
    });

    test(`the office and the frame’s sheets read well ${how}`, async ({ page, by }) => {
      expect(by).toBeTruthy();
      const addresses = ['/job/J999999', '/nowhere', '/office/paper-texts', '/office/staff'];
      for (const address of [...addresses, '/office/store', '/office/about', '/office']) {
        await openPage(page, address);
        await expect(page.getByRole('status', { name: 'One moment' })).toHaveCount(0);
        await looksRight(page);
      }
      await page.keyboard.press('Control+k');
      await page.getByRole('combobox', { name: /^Search/ }).fill('o');
      await expect(page.getByRole('option').first()).toBeVisible();
      await looksRight(page);
      await page.keyboard.press('Escape');
      await page.keyboard.press('F8');
      await expect(page.getByRole('dialog').getByRole('listitem').first()).toBeVisible();
      await looksRight(page);
    });
  });
}
