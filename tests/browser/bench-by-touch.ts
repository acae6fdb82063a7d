import { expect, type Locator, type Page } from '@playwright/test';

/**
 * A mechanic at a tablet: taps what is on the screen, and types into a field after a tap on it, as an
 * on-screen keyboard would.
 */
export class Thumb {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  /** The step of the build that is shown large. */
  get step(): Locator {
    return this.page.getByRole('region', { name: 'Step at hand' });
  }

  get field(): Locator {
    return this.page.getByRole('textbox', { name: /^Measure now/ });
  }

  featureInList(label: string): Locator {
    return this.page
      .getByRole('navigation', { name: /^Bench sheet/ })
      .getByRole('button', { name: new RegExp(`^${label}`) });
  }

  async type(field: Locator, text: string): Promise<void> {
    await field.tap();
    await field.fill(text);
  }

  async takeGauge(name: RegExp): Promise<void> {
    await this.page.getByRole('combobox', { name: 'Gauge' }).tap();
    await this.page.getByRole('option', { name }).tap();
  }

  async record(text: string): Promise<void> {
    await this.type(this.field, text);
    await this.page.getByRole('button', { name: 'Record', exact: true }).tap();
  }

  /** Goes to a feature by the list and measures its places in their turn. */
  async measure(label: string, gauge: RegExp | null, texts: readonly string[]): Promise<void> {
    await this.featureInList(label).tap();
    await expect(this.page.getByRole('heading', { level: 2, name: label })).toBeVisible();
    await this.readPlaces(label, gauge, texts);
  }

  /** Measures the places that are still to be measured of the feature on the screen. */
  async readPlaces(label: string, gauge: RegExp | null, texts: readonly string[]): Promise<void> {
    if (gauge !== null) await this.takeGauge(gauge);
    for (const [index, text] of texts.entries()) {
      await this.record(text);
      await expect(this.featureInList(label)).toContainText(`${index + 1} of`);
    }
    await expect(this.page.getByText('Every place has a reading')).toBeVisible();
  }

  /** The readings that a step of the build asks for, and back to the step. */
  async measureForStep(label: string, gauge: RegExp | null, texts: readonly string[]) {
    await this.step.getByRole('button', { name: `Measure ${label.toLowerCase()}` }).tap();
    await expect(this.page.getByRole('radio', { name: 'Final' })).toBeChecked();
    await this.readPlaces(label, gauge, texts);
    await this.page.getByRole('link', { name: 'Back to the build' }).tap();
  }

  /** The step of the build that is due now. */
  async seesStep(name: RegExp): Promise<void> {
    await expect(this.step.getByRole('heading', { level: 2, name })).toBeVisible();
  }

  async tapInStep(name: RegExp | string): Promise<void> {
    await this.step.getByRole('button', { name }).tap();
  }

  async pullBolts(turns: readonly number[]): Promise<void> {
    for (const turn of turns) await this.tapInStep(`Bolt ${turn} pulled`);
  }

  /** What becomes of a part: the outcome is tapped, then the button that decides. */
  async decide(part: string, outcome: RegExp): Promise<void> {
    const card = this.page.getByRole('region', { name: part, exact: true });
    await card.getByRole('radio', { name: outcome }).tap();
    await card.getByRole('button', { name: /^Decide:/ }).tap();
    await expect(card.getByRole('button', { name: 'Decide anew' })).toBeVisible();
  }
}
