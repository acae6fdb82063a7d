import { expect, type Page } from '@playwright/test';

/** Waits until what fades or slides has arrived: on their way colours are neither the old ones nor the new. */
export async function standsStill(page: Page): Promise<void> {
  await page.evaluate(() =>
    Promise.allSettled(
      document
        .getAnimations()
        .filter(({ effect }) => effect?.getComputedTiming().endTime !== Number.POSITIVE_INFINITY)
        .map(({ finished }) => finished),
    ),
  );
}

/** Shows a page in a theme, and waits until its colours stand still. */
export async function inTheme(page: Page, colorScheme: 'light' | 'dark'): Promise<void> {
  await page.emulateMedia({ colorScheme });
  await expect(page.locator('html')).toHaveAttribute('data-mantine-color-scheme', colorScheme);
  await standsStill(page);
}
