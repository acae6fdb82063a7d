import type { Page } from '@playwright/test';
import { benchJob, expect, readingField, takenIn, test, unique } from './bench-shop.ts';

const hand = (page: Page) => page.getByRole('region', { name: 'Step at hand' });

test('a hold point names what it lacks, and is overridden and reopened in writing', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId } = await benchJob(desk, by);
  await page.goto(`/job/${code}/bench?at=hold-points`);
  await page.getByRole('link', { name: /^Coil air gap set at every leg/ }).click();
  const point = hand(page);
  await expect(point).toContainText('Plug lead off and earthed');
  await expect(point.getByText('No final reading yet')).toBeVisible();
  await expect(point.getByRole('button', { name: /^Measured and set/ })).toBeDisabled();

  await point.getByRole('button', { name: /^Override/ }).press('Enter');
  const dialog = page.getByRole('dialog', { name: 'Override a step of the build' });
  const reason = dialog.getByRole('textbox', { name: 'Why this may go on without it' });
  await expect(reason).toBeFocused();
  await page.keyboard.type('all fine');
  await dialog.getByRole('button', { name: 'Override in my name' }).press('Enter');
  await expect(dialog.getByText('Say why in a sentence')).toHaveCount(1);
  await expect(dialog.getByText('reason:')).toHaveCount(0);
  await reason.fill('Coil is fixed on this casting, gap checked by eye');
  await page.keyboard.press('Tab');
  await dialog.getByRole('button', { name: 'Override in my name' }).press('Enter');
  await expect(dialog).toBeHidden();

  const list = page.getByRole('navigation', { name: 'Steps of the build' });
  await list.getByRole('button', { name: /^Coil air gap/ }).click();
  await expect(point).toContainText(/Overridden by .*Coil is fixed on this casting/);
  await point.getByRole('button', { name: /^Reopen/ }).click();
  const again = page.getByRole('dialog', { name: 'Reopen a step of the build' });
  await again.getByRole('textbox').fill('Another coil was fitted');
  await again.getByRole('button', { name: 'Reopen' }).click();
  await expect(point).toContainText(/Reopened by .*Another coil was fitted/);
  const airGap = async () =>
    (await desk.bench.sheet({ jobId })).holdPoints.find(({ key }) => key === 'air-gap')?.state;
  await expect.poll(airGap).toBe('open');
});

test('a step that a later one undoes is open again, and stays so until it is done again', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId } = await benchJob(desk, by);
  await page.goto(`/job/${code}/bench/build?step=turned-by-hand`);
  const list = page.getByRole('navigation', { name: 'Steps of the build' });
  const turned = list.getByRole('button', { name: /^Turned by hand/ });
  await turned.click();
  await hand(page).getByRole('button', { name: 'Seen and done' }).click();
  await expect(turned).toContainText('done, out of order');

  await list.getByRole('button', { name: /^Timing marks/ }).click();
  await hand(page).getByRole('button', { name: 'It lies this way' }).click();
  await expect(turned).toContainText('open again');
  await turned.click();
  await expect(hand(page)).toContainText(/Open again: it was passed by .* “Timing marks/);
  await hand(page).getByRole('button', { name: 'Seen and done' }).click();
  await expect(turned).toContainText('done');
  await turned.click();
  await expect(hand(page)).toContainText(/Done as number 2, \d+ s after the one before/);
  const sheet = await desk.bench.sheet({ jobId });
  expect(sheet.holdPoints.find(({ key }) => key === 'turned-by-hand')?.state).toBe('passed');
});

test('the missing reading is one step away, and the point is passed with it', async ({
  page,
  desk,
  by,
}) => {
  const { code } = await benchJob(desk, by);
  await page.goto(`/job/${code}/bench/build?step=air-gap`);
  await hand(page).getByRole('button', { name: 'Measure coil air gap' }).click();
  await expect(page.getByRole('radio', { name: 'Final' })).toBeChecked();
  await expect(readingField(page)).toBeFocused();
  await page.keyboard.type('0.3');
  await page.keyboard.press('Enter');
  await expect(readingField(page)).toHaveAccessibleName(/leg 2/);
  await page.keyboard.type('.012"');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /^Hold points/ }).click();
  await page.getByRole('link', { name: /^Coil air gap set at every leg/ }).click();
  await hand(page)
    .getByRole('button', { name: /^Measured and set/ })
    .click();
  // The step that is due next comes to hand as soon as this one is kept.
  await expect(hand(page).getByRole('heading', { level: 2 })).not.toHaveText(/^Coil air gap/);
  const list = page.getByRole('navigation', { name: 'Steps of the build' });
  await list.getByRole('button', { name: /^Coil air gap/ }).click();
  await expect(hand(page)).toContainText(/Passed by /);
});

test('an engine that the spec book lacks is added, and the way leads back to the bench', async ({
  page,
  desk,
  by,
}) => {
  const model = unique('Zephyr');
  const { code } = await takenIn(desk, by, model);
  await page.goto(`/job/${code}/bench`);
  await expect(page.getByRole('textbox', { name: 'Search the spec book' })).toHaveValue(model);
  await page.getByRole('link', { name: 'Add to the spec book' }).click();
  const form = page.getByRole('dialog', { name: 'Add an engine model' });
  await expect(form.getByRole('textbox', { name: 'Make' })).toHaveValue('Quill');
  await expect(form.getByRole('textbox', { name: 'Model' })).toHaveValue(model);
  await form.getByRole('button', { name: 'Add to the spec book' }).click();
  await page.getByRole('button', { name: 'Use it and go back to the bench' }).click();
  await expect(page).toHaveURL(new RegExp(`/job/${code}/bench`));
  await expect(page.getByRole('heading', { name: 'Cylinder bore' })).toBeVisible();
  await expect(page.getByText('No specification in the spec book')).toBeVisible();
});
