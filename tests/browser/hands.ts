import { expect, type Page } from '@playwright/test';

/**
 * The first letter by its key, the rest in one piece, as what writes Chinese or reads from dictation enters
 * it: the text itself is not counted, and a form that is drawn anew for each letter costs its time.
 */
async function typeText(page: Page, text: string): Promise<void> {
  const [first = '', ...rest] = text;
  await page.keyboard.type(first);
  if (rest.length > 0) await page.keyboard.insertText(rest.join(''));
}

/**
 * Somebody at the keyboard who counts. What an intake costs beyond the text itself is every press of a key
 * that writes no text (Tab, Enter, arrows, a function key, a key with Ctrl) and every field that is filled.
 */
export class Hands {
  readonly #page: Page;
  presses = 0;
  fields = 0;

  constructor(page: Page) {
    this.#page = page;
  }

  get cost(): number {
    return this.presses + this.fields;
  }

  async press(key: string): Promise<void> {
    this.presses += 1;
    await this.#page.keyboard.press(key);
  }

  /** Types into the field that has the focus, which has to be the one of this name. */
  async fill(name: string, text: string): Promise<void> {
    await this.sees(name);
    this.fields += 1;
    await typeText(this.#page, text);
  }

  /** A field that is filled by keys instead of text. */
  async choose(name: string, ...keys: string[]): Promise<void> {
    await this.sees(name);
    this.fields += 1;
    for (const key of keys) await this.press(key);
  }

  async sees(name: string): Promise<void> {
    const focused = this.#page.locator(':focus');
    await expect(focused).toHaveAccessibleName(name);
  }
}
