import { expect, type Page } from '@playwright/test';
import axe from 'axe-core';
import { inTheme, standsStill } from './themes.ts';

declare global {
  interface Window {
    axe?: typeof axe;
  }
}

const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** Axe in the page itself, read once for each page that is opened; what passed need not be written down. */
async function findsNothing(page: Page, runOnly: axe.RunOnly): Promise<void> {
  const isThere = await page.evaluate(() => window.axe !== undefined);
  if (!isThere) await page.evaluate(axe.source);
  const found = await page.evaluate(async (rules) => {
    if (window.axe === undefined) throw new Error('Axe is not there.');
    const { violations } = await window.axe.run({ runOnly: rules, reporter: 'no-passes' });
    return violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]);
  }, runOnly);
  expect(found).toEqual([]);
}

/** No violation of WCAG 2.2 AA that a machine can find. */
export async function noFaults(page: Page): Promise<void> {
  // A button half under the bar at the top would count as a target that is too small.
  await page.evaluate(() => window.scrollTo(0, 0));
  await standsStill(page);
  await findsNothing(page, { type: 'tag', values: WCAG });
}

/**
 * The same in both themes. A theme changes nothing but colours, and only these two of axe's rules look at
 * colours: the second look asks for them alone.
 */
export async function noFaultsInEitherTheme(page: Page): Promise<void> {
  await inTheme(page, 'light');
  await noFaults(page);
  await inTheme(page, 'dark');
  await findsNothing(page, { type: 'rule', values: ['color-contrast', 'link-in-text-block'] });
}

async function nothingTooWide(page: Page): Promise<void> {
  const tooWide = await page.evaluate(
    () => document.documentElement.scrollWidth - window.innerWidth,
  );
  expect(tooWide).toBeLessThanOrEqual(0);
}

/** No fault, and nothing that runs out of the window. */
export async function looksRight(page: Page): Promise<void> {
  await noFaults(page);
  await nothingTooWide(page);
}

/** The same in both themes. */
export async function looksRightInEitherTheme(page: Page): Promise<void> {
  await noFaultsInEitherTheme(page);
  await nothingTooWide(page);
}

/** Light at the counter's width, dark at a tablet's: what is too narrow has nothing to do with its colours. */
export async function looksRightAtEitherWidth(page: Page): Promise<void> {
  await page.setViewportSize({ width: 900, height: 1200 });
  await inTheme(page, 'dark');
  await looksRight(page);
  await page.setViewportSize({ width: 1280, height: 800 });
  await inTheme(page, 'light');
  await looksRight(page);
}
