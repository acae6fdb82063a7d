import type { Page } from '@playwright/test';
import type { JobId, StaffId } from '../../shared/contract/ids.ts';
import { benchJob, expect, test, unique } from './bench-shop.ts';
import type { Desk } from './desk-client.ts';
import { looksRightInEitherTheme } from './faultless.ts';

/** An invented single, bore 68.00 to 68.04 mm: worn to 68.14 across the crankshaft at the top. */
async function wornJob(desk: Desk, by: StaffId) {
  const job = await benchJob(desk, by);
  const texts = {
    'top-along': '68.10',
    'top-across': '68.14',
    'middle-along': '68.07',
    'middle-across': '68.09',
    'bottom-along': '68.03',
    'bottom-across': '68.05',
  };
  for (const [place, text] of Object.entries(texts))
    await desk.bench.record({
      by,
      jobId: job.jobId,
      feature: 'bore',
      place: `c1-${place}`,
      phase: 'as-received',
      text,
      unit: 'mm',
      gaugeId: job.gaugeId,
      keepAsTyped: true,
    });
  const number = unique('QL');
  const piston = await desk.parts.add({
    by,
    number,
    description: `Piston, 0.25 oversize, ${job.engineModel}`,
    price: 4890,
    cost: 2900,
  });
  await desk.parts.move({ by, partId: piston.id, kind: 'received', quantity: 1000 });
  return { ...job, number };
}

const card = (page: Page, name: string) => page.getByRole('region', { name, exact: true });

const standingOf = async (desk: Desk, jobId: JobId, subject: string) =>
  (await desk.bench.decisions({ jobId })).parts.find((part) => part.subject === subject)?.standing;

test.describe('by touch on a tablet', () => {
  test.use({ viewport: { width: 900, height: 1200 }, hasTouch: true });

  test('a worn bore: advice, oversize, and its lines arrive at the till', async ({
    page,
    desk,
    by,
  }) => {
    const { code, jobId, number } = await wornJob(desk, by);
    await page.goto(`/job/${code}/bench`);
    await page.getByRole('link', { name: 'Decide' }).tap();
    const bore = card(page, 'Cylinder bore');
    await expect(bore).toContainText('Advice: next oversize +0.25');
    await expect(bore).toContainText('68.14 mm');
    await expect(page.getByText('0 of 12 decided')).toBeVisible();

    await bore.getByRole('radio', { name: 'Next oversize Advised' }).tap();
    const step = bore.getByRole('radio', { name: /^\+0\.25/ });
    await expect(step).toBeChecked();
    await expect(step).toContainText('to 68.25–68.29 mm');
    await expect(step).toContainText(`${number}: 1 on the shelf`);
    await bore.getByRole('button', { name: 'Decide: next oversize +0.25 mm' }).tap();
    await expect(bore).toContainText('Next oversize +0.25 mm, to 68.25–68.29 mm');
    // The work goes on at the next part without a decision.
    await expect(page.getByRole('heading', { name: 'Piston', exact: true })).toBeFocused();

    const piston = card(page, 'Piston');
    await expect(piston).toContainText('Goes with the bore, for which +0.25 mm is decided.');
    await piston.getByRole('radio', { name: 'Oversize piston Advised' }).tap();
    await piston.getByRole('button', { name: /^Decide: oversize piston/ }).tap();
    await expect(page.getByText('2 of 12 decided')).toBeVisible();

    for (const target of await page.getByRole('radio').all()) {
      await expect
        .poll(async () => (await target.boundingBox())?.height)
        .toBeGreaterThanOrEqual(44);
      await expect.poll(async () => (await target.boundingBox())?.width).toBeGreaterThanOrEqual(44);
    }

    const follows = card(page, 'What follows for the estimate');
    await expect(follows.getByRole('row', { name: /Bore and hone cylinder/ })).toContainText(
      'to be set',
    );
    await follows.getByRole('button', { name: 'Put 3 lines into the estimate' }).tap();
    await expect(page).toHaveURL(new RegExp(`/job/${code}/till$`));
    await expect(page.getByRole('textbox', { name: 'Line 1, description' })).toHaveValue(
      /Bore and hone cylinder \+0\.25.mm, to 68\.25–68\.29.mm/,
    );
    await expect(page.getByRole('textbox', { name: 'Line 1, unit price' })).toHaveValue('');
    await expect(page.getByRole('textbox', { name: 'Line 2, unit price' })).toHaveValue('48.90');

    await page.goBack();
    await expect(follows.getByText('All of it is in the estimate already.')).toBeVisible();
    await expect
      .poll(() => standingOf(desk, jobId, 'cylinder'))
      .toMatchObject({
        step: 0.25,
        machineTo: { low: 68.25, high: 68.29 },
      });
  });
});

test('by the keyboard: against the advice only with a reason; decided anew, the old one stays', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId } = await wornJob(desk, by);
  await page.goto(`/job/${code}/bench/decide`);
  const bore = card(page, 'Cylinder bore');
  await bore.getByRole('radio', { name: 'Reuse' }).focus();
  await page.keyboard.press('Space');
  await expect(bore.getByText('It goes against the advice: say why.')).toBeVisible();
  const reason = bore.getByRole('textbox', { name: 'Reason' });
  await reason.focus();
  await page.keyboard.type('so');
  await bore.getByRole('button', { name: 'Decide: reuse' }).press('Enter');
  await expect(bore.getByRole('alert')).toContainText('Say why in a few words');
  // Nothing typed is lost by a closed window.
  await page.reload();
  await expect(reason).toHaveValue('so');
  await reason.fill('Rental pump, to be scrapped in autumn');
  await bore.getByRole('button', { name: 'Decide: reuse' }).press('Enter');
  await expect(bore).toContainText('Rental pump, to be scrapped in autumn');

  await bore.getByRole('button', { name: 'Decide anew' }).press('Enter');
  await bore.getByRole('radio', { name: 'Next oversize Advised' }).press('Space');
  await bore.getByRole('radio', { name: /^\+0\.50/ }).press('Space');
  await bore.getByRole('textbox', { name: 'Machine to, from (mm)' }).fill('68.51');
  await bore.getByRole('textbox', { name: 'Reason' }).fill('Pitted: 0.25 leaves marks');
  await bore.getByRole('button', { name: /^Decide: next oversize \+0\.50/ }).press('Enter');
  await expect(bore).toContainText('Next oversize +0.50 mm, to 68.51–68.54 mm');
  await bore.locator('summary').press('Enter');
  await expect(bore.locator('s', { hasText: 'Reuse' })).toBeVisible();
  await expect.poll(() => standingOf(desk, jobId, 'cylinder')).toMatchObject({ step: 0.5 });
});

test('a stop proposes no line, and to move the job, which a person does', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId } = await wornJob(desk, by);
  await page.goto(`/job/${code}/bench/decide`);
  const engine = card(page, 'The engine as a whole');
  await engine.getByRole('radio', { name: /^Stop/ }).click();
  await engine.getByRole('textbox', { name: 'Reason' }).fill('Crankcase cracked at the mount');
  await engine.getByRole('button', { name: /^Decide: stop/ }).click();
  const follows = card(page, 'What follows for the estimate');
  await expect(follows).toContainText('The job itself has not moved');
  await expect.poll(async () => (await desk.counter.job({ id: jobId })).state).toBe('taken-in');
  await follows.getByRole('button', { name: /^Move/ }).click();
  await page.getByRole('textbox', { name: 'Why the work stops' }).fill('Not worth it');
  await page.getByRole('button', { name: 'Move to ‘Stopped’' }).click();
  await expect(page.getByText('Stopped').first()).toBeVisible();
  await expect.poll(async () => (await desk.counter.job({ id: jobId })).state).toBe('stopped');
});

test('deciding has no accessibility faults and nothing beyond its edges', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId } = await wornJob(desk, by);
  await desk.bench.decide({
    by,
    jobId,
    subject: 'cylinder',
    cylinder: 1,
    choice: 'next-oversize',
  });
  await page.goto(`/job/${code}/bench/decide`);
  await card(page, 'Piston').getByRole('radio', { name: 'Oversize piston Advised' }).click();
  await card(page, 'The engine as a whole').getByRole('radio', { name: /^Stop/ }).click();
  for (const [width, height] of [
    [1280, 800],
    [900, 1200],
  ] as const) {
    await page.setViewportSize({ width, height });
    await looksRightInEitherTheme(page);
  }
});
