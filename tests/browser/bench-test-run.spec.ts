import type { Page } from '@playwright/test';
import type { StaffId } from '../../shared/contract/ids.ts';
import { expect, takenIn, test, unique } from './bench-shop.ts';
import type { Desk } from './desk-client.ts';
import { looksRight } from './faultless.ts';

/** A job on a twin-cylinder engine: two cylinders are held against each other. */
async function twinJob(desk: Desk, by: StaffId) {
  const twin = await desk.specbook.addModel({
    by,
    make: 'Quill',
    model: unique('Q2-420'),
    cycle: 'four-stroke',
    cylinders: 2,
    bore: 68,
    stroke: 58,
  });
  const { jobId, code } = await takenIn(desk, by, twin.model);
  await desk.bench.chooseEngineModel({ by, jobId, engineModelId: twin.id });
  return { jobId, code, engineModelId: twin.id };
}

const choose = (page: Page, what: string, outcome: string) =>
  page.getByRole('radiogroup', { name: what }).getByText(outcome, { exact: true }).click();

test('a run with a failing stop switch is not passed; the next one is, and both stay', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId } = await twinJob(desk, by);
  await page.setViewportSize({ width: 900, height: 1200 });
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.goto(`/job/${code}/bench/run`);
  const cautions = page.getByRole('region', { name: 'Cautions' });
  await expect(cautions).toContainText('carbon monoxide');
  await expect(cautions).toContainText('rotating parts');

  await choose(page, 'Stop switch', 'Fails');
  await choose(page, 'Safety interlocks', 'Works');
  await page.getByRole('textbox', { name: 'Idle' }).fill('1750');
  await page.getByText('psi', { exact: true }).click();
  await page.getByRole('textbox', { name: 'Compression, cylinder 1' }).fill('150');
  await page.getByRole('textbox', { name: 'Compression, cylinder 2' }).fill('112');
  await expect(page.getByText(/Cylinder 2 has 74\.6 % of cylinder 1: uneven/)).toBeVisible();
  await page.getByRole('textbox', { name: 'Leak-down, cylinder 2' }).fill('45');
  await page.getByRole('combobox', { name: 'Air leaves by, cylinder 2' }).click();
  await page.getByRole('option', { name: /exhaust valve/ }).click();
  await expect(
    page.getByText(/Very bad: the engine wants an overhaul where it leaves\. Air in the exhaust/),
  ).toBeVisible();
  await looksRight(page);

  await page.getByRole('button', { name: 'Passed: sign it off' }).click();
  await expect(page.locator('[data-code="UNSAFE_TO_PASS"]')).toBeVisible();
  await expect(
    page.getByText(
      'Stop switch: failed; Governor: not tried; Fuel system: not looked at for leaks.',
    ),
  ).toBeVisible();
  await expect.poll(async () => (await desk.bench.testRuns({ jobId })).runs).toHaveLength(0);

  // Nothing typed is lost by a closed window.
  await page.reload();
  await expect(page.getByRole('textbox', { name: 'Idle' })).toHaveValue('1750');
  await page.getByRole('button', { name: 'Record as not passed' }).click();
  const runs = page.getByRole('region', { name: 'Runs so far' });
  await expect(runs.getByText('Not passed')).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Idle' })).toHaveValue('');

  await choose(page, 'Stop switch', 'Works');
  await choose(page, 'Safety interlocks', 'Not fitted');
  await choose(page, 'Governor', 'Works');
  await choose(page, 'Fuel system', 'Dry');
  await page
    .getByRole('textbox', { name: 'Why it is not fitted' })
    .fill('Built without it by its maker');
  await page.getByRole('button', { name: 'Passed: sign it off' }).click();
  await expect(runs.getByText('Passed', { exact: true })).toBeVisible();
  await expect(runs.getByText('Not passed')).toBeVisible();
  const kept = (await desk.bench.testRuns({ jobId })).runs;
  expect(kept.map(({ passed }) => passed)).toEqual([true, false]);
  expect(kept[1]?.findings.compression[1]).toBeCloseTo(772.2, 1);
  await looksRight(page);
});

test('by the keyboard alone, and a figure that can’t be read keeps the run back', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId, engineModelId } = await twinJob(desk, by);
  const source = await desk.specbook.addSource({ by, kind: 'makers-manual', title: unique('Q2') });
  await desk.specbook.addSpecification({
    by,
    engineModelId,
    feature: 'top-speed',
    unit: '1/min',
    low: '3500',
    high: '3700',
    sourceId: source.id,
    page: '9',
  });
  const name = unique('Tachometer');
  await desk.bench.addGauge({
    by,
    name,
    kind: 'tachometer',
    unit: 'rpm',
    rangeLow: 100,
    rangeHigh: 20_000,
    resolution: 10,
    maxError: 10,
  });
  await page.goto(`/job/${code}/bench/run`);
  const stop = page.getByRole('radiogroup', { name: 'Stop switch' });
  await stop.getByRole('radio', { name: 'Not tried' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(stop.getByRole('radio', { name: 'Works' })).toBeChecked();
  await page.getByRole('textbox', { name: 'Top, no load' }).focus();
  await page.keyboard.type('fast');
  await page.getByRole('button', { name: 'Record as not passed' }).press('Enter');
  await expect(page.getByText('A figure above can’t be read')).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Top, no load' })).toHaveAttribute(
    'aria-invalid',
    'true',
  );
  await expect.poll(async () => (await desk.bench.testRuns({ jobId })).runs).toHaveLength(0);
  await page.getByRole('textbox', { name: 'Top, no load' }).fill('3695');
  const verdict = page.getByRole('status', { name: 'Verdict, Top, no load' });
  await expect(verdict).toHaveText('Within');
  await page.getByRole('combobox', { name: 'Tachometer' }).press('ArrowDown');
  await page.getByRole('option', { name }).click();
  await expect(verdict).toHaveText('Too close to call');
  await expect(page.getByText('Book: 3500 to 3700')).toBeVisible();
  await page.getByRole('button', { name: 'Record as not passed' }).press('Enter');
  await expect(page.getByRole('region', { name: 'Runs so far' })).toContainText(
    /3695\srpm, too close to call: 3500 to 3700\srpm \(.*, ±13\)/,
  );
  await looksRight(page);
});

test('what pressure is to be expected is told for the altitude, as no verdict', async ({
  page,
  desk,
  by,
}) => {
  const { code } = await twinJob(desk, by);
  await page.goto(`/job/${code}/bench/run`);
  await page.getByText('What pressure is to be expected here?').click();
  await page.getByRole('textbox', { name: 'Compression ratio' }).fill('6');
  await page.getByRole('textbox', { name: 'Altitude of the shop, metres' }).fill('1600');
  await expect(page.getByText(/A compression release lowers the figure/)).toBeVisible();
  await expect(page.getByText(/About .*\skPa \(.* psi\)/)).toBeVisible();
});
