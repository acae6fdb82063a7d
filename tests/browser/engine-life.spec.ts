import type { StaffId } from '../../shared/contract/ids.ts';
import { benchJob, expect, test } from './bench-shop.ts';
import type { Desk } from './desk-client.ts';
import { looksRight } from './faultless.ts';

/** An engine that came in three times, its bore a little wider each time. */
async function wornEngine(desk: Desk, by: StaffId) {
  const first = await benchJob(desk, by);
  const manual = await desk.specbook.addSource({
    by,
    kind: 'makers-manual',
    title: 'Quill Q series bulletin on wear',
  });
  await desk.specbook.addSpecification({
    by,
    engineModelId: first.engineModelId,
    feature: 'crankpin',
    low: '25.98',
    high: '26.00',
    wearLimit: '25.90',
    unit: 'mm',
    sourceId: manual.id,
  });
  const { customerId, machineDetails } = await desk.counter.job({ id: first.jobId });
  const measure = (jobId: typeof first.jobId, text: string) =>
    desk.bench.record({
      by,
      jobId,
      feature: 'crankpin',
      place: 'c1-first',
      phase: 'as-received',
      text,
      unit: 'mm',
    });
  const again = async (engineHours: number) =>
    desk.counter.takeIn({
      by,
      customer: { which: 'known', id: customerId },
      machine: { which: 'known', id: machineDetails.id, takeInAgain: true },
      complaint: `Knocks after ${engineHours} hours`,
      engineHours,
      signature: { name: 'Ødegård Berg' },
    });
  for (const [hours, text] of [
    [120, '25.985'],
    [320, '25.964'],
    [520, '25.946'],
  ] as const) {
    const { jobId } = await again(hours);
    await measure(jobId, text);
  }
  return { ...first, customerId, engineId: machineDetails.engine.id };
}

test('an engine’s life is one step from its job, and says how it wears', async ({
  page,
  desk,
  by,
}) => {
  const { code, customerId, engineId } = await wornEngine(desk, by);
  await page.goto(`/job/${code}`);
  await page.getByRole('link', { name: 'Life of this engine' }).press('Enter');
  await expect(page).toHaveURL(new RegExp(`/engine/${engineId}`));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Engine Quill/);
  await expect(page.getByRole('heading', { name: '4 visits' })).toBeVisible();
  await expect(page.getByText('520 running hours')).toBeVisible();

  const plot = page.getByRole('img', { name: /^Crankpin/ });
  await expect(plot).toHaveAccessibleDescription(/down by .* per 100 running hours, by 3 readings/);
  const trend = page.getByTestId('trend');
  await expect(trend).toContainText('left to the wear limit');
  await expect(trend).toContainText(/the limit would be reached at \d+ running hours/);
  await expect(trend).toContainText('scatter');
  const rows = page.getByRole('table', { name: /^Every reading of: Crankpin/ }).getByRole('row');
  await expect(rows).toHaveCount(4);
  await looksRight(page);

  // All three were measured today: over dates there is no wear to tell.
  await page.getByText('Dates', { exact: true }).click();
  await expect(trend).toContainText('one time only');

  await page.goto(`/customer/${customerId}`);
  await expect(page.getByRole('link', { name: /^Life of this engine/ })).toHaveAttribute(
    'href',
    `/engine/${engineId}`,
  );
});

test('it reads well in the dark on a tablet, and without any reading', async ({
  page,
  desk,
  by,
}) => {
  await page.setViewportSize({ width: 900, height: 1200 });
  await page.emulateMedia({ colorScheme: 'dark' });
  const { engineId } = await wornEngine(desk, by);
  await page.goto(`/engine/${engineId}`);
  await expect(page.getByRole('img', { name: /^Crankpin/ })).toBeVisible();
  await looksRight(page);

  const { jobId } = await benchJob(desk, by);
  const { machineDetails } = await desk.counter.job({ id: jobId });
  await page.goto(`/engine/${machineDetails.engine.id}`);
  await expect(page.getByText('Nothing was measured yet')).toBeVisible();
  await looksRight(page);
  await page.goto(`/engine/${jobId}`);
  await expect(page.getByText('There is no such engine')).toBeVisible();
});

test('the clearance sheet is issued from the measuring page, and kept with the papers', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId } = await benchJob(desk, by);
  await page.goto(`/job/${code}/bench`);
  await page.getByRole('button', { name: 'Clearance sheet…' }).click();
  const dialog = page.getByRole('dialog', { name: 'Clearance sheet' });
  await dialog.getByRole('button', { name: 'Issue the sheet' }).click();
  await expect(dialog.getByText(/Nothing was measured on this job yet/)).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();

  await desk.bench.record({
    by,
    jobId,
    feature: 'bore',
    place: 'c1-top-along',
    phase: 'as-received',
    text: '68.02',
    unit: 'mm',
  });
  await page.getByRole('button', { name: 'Clearance sheet…' }).press('Enter');
  await dialog.getByRole('switch', { name: 'Show both units' }).setChecked(true);
  await looksRight(page);
  await dialog.getByRole('button', { name: 'Issue the sheet' }).press('Enter');
  const paper = dialog.getByRole('button', { name: /^Clearance sheet K-\d{6}$/ });
  await expect(paper).toBeVisible();
  await page.goto(`/job/${code}`);
  await expect(
    page
      .getByRole('region', { name: 'Papers' })
      .getByRole('button', { name: /^Clearance sheet K-\d{6}$/ }),
  ).toBeVisible();
  await looksRight(page);
});

test('running hours are asked where they cost a hurried hand no key', async ({
  page,
  desk,
  by,
}) => {
  const { jobId, code } = await desk.counter.takeIn({
    by,
    customer: { which: 'new', name: 'Ødegård Berg' },
    machine: { which: 'new', kind: 'pump', engine: {} },
    complaint: 'Loses prime',
    engineHours: 812.5,
    signature: { name: 'Ødegård Berg' },
  });
  await expect.poll(async () => (await desk.counter.job({ id: jobId })).engineHours).toBe(812.5);
  await page.goto(`/job/${code}`);
  await expect(page.getByText('812.5 at intake')).toBeVisible();
  await page.goto('/take-in');
  const hours = page.getByRole('textbox', { name: 'Running hours of the engine' });
  await expect(hours).toBeHidden();
  await page.getByRole('button', { name: /^Less often needed/ }).click();
  await hours.fill('many');
  await expect(hours).toBeVisible();
});
