import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** No violation of WCAG 2.2 AA that a machine can find. */
export async function noFaults(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  expect(violations).toEqual([]);
}

/** No fault, and nothing that runs out of the window. */
export async function looksRight(page: Page): Promise<void> {
  await noFaults(page);
  const tooWide = await page.evaluate(
    () => document.documentElement.scrollWidth - window.innerWidth,
  );
  expect(tooWide).toBeLessThanOrEqual(0);
}
