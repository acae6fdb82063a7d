import { expect, type Locator } from '@playwright/test';

/** What stands on the screen, for a test that goes on with it: read once it is there, not before. */

/** The text of the one that is found, once it reads as it should. */
export async function textOf(locator: Locator, wanted: RegExp): Promise<string> {
  await expect(locator).toHaveText(wanted);
  return (await textsOf(locator, wanted))[0] ?? '';
}

/** The texts of all that are found, once one of them reads as it should. */
export async function textsOf(locator: Locator, wanted: RegExp | string): Promise<string[]> {
  let texts: string[] = [];
  const isThere = async () => {
    texts = await locator.allInnerTexts();
    return texts.some((text) =>
      typeof wanted === 'string' ? text.includes(wanted) : wanted.test(text),
    );
  };
  await expect.poll(isThere).toBe(true);
  return texts;
}
