import { expect, type Page } from '@playwright/test';

/** Shows a page in a theme, and waits until its colours stand still: on their way they are neither theme's. */
export async function inTheme(page: Page, colorScheme: 'light' | 'dark'): Promise<void> {
  await page.emulateMedia({ colorScheme });
  await expect(page.locator('html')).toHaveAttribute('data-mantine-color-scheme', colorScheme);
  await page.evaluate(() =>
    Promise.allSettled(document.getAnimations().map(({ finished }) => finished)),
  );
}
