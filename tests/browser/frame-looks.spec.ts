import { expect, looksRight, openPage, takenIn, test, unique } from './frame-shop.ts';

for (const colorScheme of ['light', 'dark'] as const)
  for (const viewport of [
    { width: 1280, height: 800 },
    { width: 900, height: 1200 },
  ])
    test(`the frame reads well in ${colorScheme} at ${viewport.width}`, async ({
      page,
      desk,
      by,
    }) => {
      const { today } = await desk.office.about({});
      const { code, customerId } = await takenIn(desk, by, unique('Looks'), today);
      await page.setViewportSize(viewport);
      await page.emulateMedia({ colorScheme });
      const addresses = [
        '/',
        '/jobs',
        `/job/${code}`,
        '/job/J999999',
        '/customers',
        `/customer/${customerId}`,
        '/office',
        '/office/paper-texts',
        '/office/staff',
        '/office/store',
        '/office/about',
        '/nowhere',
      ];
      for (const address of addresses) {
        await openPage(page, address);
        await expect(page.locator('main h1').first()).toBeVisible();
        await expect(page.getByRole('status', { name: 'One moment' })).toHaveCount(0);
        await looksRight(page);
      }
      await page.keyboard.press('Control+k');
      await page.getByRole('combobox', { name: /^Search/ }).fill('looks');
      await expect(page.getByRole('option').first()).toBeVisible();
      await looksRight(page);
    });
