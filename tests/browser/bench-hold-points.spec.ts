import { benchJob, expect, readingField, takenIn, test, unique } from './bench-shop.ts';

test('a hold point is refused with what is missing, then overridden in writing', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId } = await benchJob(desk, by);
  await page.goto(`/job/${code}/bench?at=hold-points`);
  const point = page.getByRole('listitem', { name: /^Coil air gap set at every leg/ });
  await expect(point).toContainText('Plug lead off and earthed');
  await point.getByRole('button', { name: /^Pass/ }).click();
  await expect(point.getByText('Missing: Coil air gap.')).toBeVisible();
  await expect(point).toContainText('Open');

  await point.getByRole('button', { name: /^Override/ }).press('Enter');
  const dialog = page.getByRole('dialog', { name: 'Override a hold point' });
  const reason = dialog.getByRole('textbox', { name: 'Why this may go on without it' });
  await expect(reason).toBeFocused();
  await page.keyboard.type('no');
  await dialog.getByRole('button', { name: 'Override in my name' }).press('Enter');
  await expect(dialog.getByText('Give the reason in a few words').first()).toBeVisible();
  await reason.fill('Coil is fixed on this casting, gap checked by eye');
  await page.keyboard.press('Tab');
  await dialog.getByRole('button', { name: 'Override in my name' }).press('Enter');
  await expect(dialog).toBeHidden();
  await expect(point).toContainText(/Overridden by .*Coil is fixed on this casting/);

  await point.getByRole('button', { name: /^Reopen/ }).click();
  const again = page.getByRole('dialog', { name: 'Reopen a hold point' });
  await again.getByRole('textbox').fill('Another coil was fitted');
  await again.getByRole('button', { name: 'Reopen' }).click();
  await expect(point).toContainText(/Open; reopened by .*Another coil was fitted/);
  const sheet = await desk.bench.sheet({ jobId });
  expect(sheet.holdPoints.find(({ key }) => key === 'air-gap')?.state).toBe('open');
});

test('the missing reading is one step away, and the point is passed with it', async ({
  page,
  desk,
  by,
}) => {
  const { code } = await benchJob(desk, by);
  await page.goto(`/job/${code}/bench?at=hold-points`);
  const point = page.getByRole('listitem', { name: /^Coil air gap set at every leg/ });
  await point.getByRole('button', { name: 'Measure coil air gap' }).click();
  await expect(page.getByRole('radio', { name: 'Final' })).toBeChecked();
  await expect(readingField(page)).toBeFocused();
  await page.keyboard.type('0.3');
  await page.keyboard.press('Enter');
  await expect(readingField(page)).toHaveAccessibleName(/leg 2/);
  await page.keyboard.type('.012"');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /^Hold points/ }).click();
  await point.getByRole('button', { name: /^Pass/ }).click();
  await expect(point).toContainText(/Passed by /);
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
