import { benchJob, expect, readingField, readingsOf, test } from './bench-shop.ts';
import { noFaults, noFaultsInEitherTheme } from './faultless.ts';

test('a gauge found bad says which readings it touched, and they say so themselves', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId, gaugeId, gaugeName } = await benchJob(desk, by);
  await desk.bench.record({
    by,
    jobId,
    feature: 'bore',
    place: 'c1-top-along',
    phase: 'as-received',
    text: '68.02',
    unit: 'mm',
    gaugeId,
  });
  await page.goto('/gauges');
  await page.getByRole('link', { name: gaugeName }).click();
  await expect(page.getByRole('heading', { name: /^Good to ±0\.0\d+ mm/ })).toBeVisible();
  await expect(page.getByText('1 reading of 1 job')).toBeVisible();

  await page.getByRole('button', { name: 'Enter a check' }).click();
  const dialog = page.getByRole('dialog', { name: `Check of ${gaugeName}` });
  await dialog.getByText('Found bad', { exact: true }).click();
  await dialog.getByRole('textbox', { name: 'What is wrong with it' }).fill('Anvil chipped');
  await dialog.getByRole('button', { name: 'Put it out of use' }).click();
  await expect(dialog).toBeHidden();
  await expect(page.getByRole('heading', { name: 'Readings in doubt' })).toBeVisible();
  await expect(page.getByRole('listitem').filter({ hasText: 'Anvil chipped' })).toContainText(
    'found bad',
  );
  const row = page.getByRole('row', { name: new RegExp(code) });
  await expect(row).toContainText('Cylinder bore');
  await noFaults(page);

  await row.getByRole('link', { name: code }).click();
  await expect(page.getByText(/gauge found bad on .*: in doubt/)).toBeVisible();
});

test('valve lash asks where the engine stands before it takes a value', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId } = await benchJob(desk, by);
  await page.setViewportSize({ width: 900, height: 1200 });
  await page.goto(`/job/${code}/bench?at=valve-lash-intake`);
  const question = page.getByRole('group', { name: 'Where does the engine stand?' });
  await expect(question).toBeVisible();
  await expect(readingField(page)).toBeHidden();
  await noFaults(page);
  await question.getByRole('button', { name: /just past top dead centre/ }).click();
  await expect(readingField(page)).toBeFocused();
  await expect(page.getByText('Engine stands: compression stroke, just past')).toBeVisible();
  await page.keyboard.type('0.15');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Every place has a reading')).toBeVisible();
  await expect
    .poll(async () => (await readingsOf(desk, jobId, 'valve-lash-intake'))?.[0])
    .toMatchObject([{ text: '0.15', position: 'just-past-top-dead-centre' }]);
});

test('a foot switch records with a space; without one a space belongs to the unit', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId } = await benchJob(desk, by);
  await page.goto(`/job/${code}/bench?at=head-bolt-torque`);
  await readingField(page).click();
  await page.keyboard.type('8.5 lbf·ft');
  await page.keyboard.press('Enter');
  await expect(readingField(page)).toHaveAccessibleName(/stage 2 of 2/);
  await page.getByRole('switch', { name: 'Foot switch: space records' }).click({ force: true });
  await readingField(page).click();
  // A foot that comes down too early does nothing.
  await page.keyboard.press('Space');
  await page.keyboard.type('17lbf·ft');
  await page.keyboard.press('Space');
  await expect(page.getByRole('button', { name: /^Next/ })).toBeFocused();
  await expect
    .poll(() => readingsOf(desk, jobId, 'head-bolt-torque'))
    .toMatchObject([[{ text: '8.5 lbf·ft' }], [{ text: '17lbf·ft' }]]);
});

test('two legs that disagree by ten are questioned without a band, and scatter is settled', async ({
  page,
  desk,
  by,
}) => {
  const { code, gaugeName } = await benchJob(desk, by);
  await page.goto(`/job/${code}/bench?at=crankpin`);
  await readingField(page).fill('29.97');
  await page.keyboard.press('Enter');
  await expect(readingField(page)).toHaveAccessibleName(/quarter turn on/);
  await page.keyboard.type('2.996');
  await page.keyboard.press('Enter');
  const question = page.getByRole('group', { name: '29.96?' });
  await expect(question).toContainText('Beside it: 29.97');
  await page.keyboard.press('t');
  await expect(page.getByText('Every place has a reading')).toBeVisible();

  await page.goto(`/job/${code}/bench?at=bore`);
  await page.getByRole('combobox', { name: 'Gauge' }).click();
  await page.getByRole('option', { name: new RegExp(gaugeName) }).click();
  await readingField(page).fill('68.037');
  await page.keyboard.press('Enter');
  await expect(page.getByText(/To settle it: a gauge that is good to ±0\.003/)).toBeVisible();
  for (const text of ['68.025', '68.037']) {
    await page.getByRole('button', { name: 'top, along the crankshaft', exact: true }).click();
    await readingField(page).fill(text);
    await page.keyboard.press('Enter');
    await expect(readingField(page)).toHaveValue('');
  }
  await expect(page.getByText(/Mean of 3 readings 68\.033 mm/)).toBeVisible();
  await expect(page.getByText(/To settle it: \d+ readings in all/)).toBeVisible();
});

test('features that the book doesn’t know wait under More, without faults', async ({
  page,
  desk,
  by,
}) => {
  const { code } = await benchJob(desk, by);
  await page.setViewportSize({ width: 900, height: 1200 });
  await page.goto(`/job/${code}/bench?at=bore`);
  const sheet = page.getByRole('navigation', { name: /^Bench sheet/ });
  await expect(sheet.getByRole('button', { name: /^Valve seat width/ })).toBeHidden();
  await sheet.getByText(/^More features/).click();
  await sheet.getByRole('button', { name: /^Valve seat width/ }).click();
  await expect(
    page.getByRole('img', { name: /Measure now: the width of the ground seat/ }),
  ).toBeVisible();
  await noFaultsInEitherTheme(page);
  for (const at of ['main-journal', 'deck-flatness', 'chamber-volume']) {
    await page.goto(`/job/${code}/bench?at=${at}`);
    await expect(page.getByRole('img', { name: /Measure now/ })).toBeVisible();
    await noFaultsInEitherTheme(page);
  }
});
