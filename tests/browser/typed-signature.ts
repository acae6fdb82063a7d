import { expect, type Page } from '@playwright/test';

/**
 * A typed name becomes a signature by two acts, at the keyboard: Enter in the empty field writes the name
 * that is expected, Tab and Enter record it.
 *
 * @param which of the page's signatures, from 0
 */
export async function recordTypedName(page: Page, which = 0): Promise<void> {
  const name = page.getByRole('textbox', { name: 'Name of who signs' }).nth(which);
  await name.focus();
  await page.keyboard.press('Enter');
  await expect(name).not.toHaveValue('');
  await page.keyboard.press('Tab');
  await expect(page.locator(':focus')).toHaveAccessibleName('Record typed signature');
  await page.keyboard.press('Enter');
  await expect(page.locator(':focus')).toContainText('typed name, entered by');
}
