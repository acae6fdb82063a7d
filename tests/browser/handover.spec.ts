import type { JobDossier } from '../../shared/contract/counter/index.ts';
import type { PartId } from '../../shared/contract/ids.ts';
import { type Desk, deskAt, ownerOf } from './desk-client.ts';
import { noFaultsInEitherTheme } from './faultless.ts';
import { expect, test } from './fixtures.ts';
import { unique } from './frame-shop.ts';
import { recordTypedName } from './typed-signature.ts';

const prepared = test.extend<{ desk: Desk }>({
  desk: async ({ server, session, page }, use) => {
    const desk = deskAt(server.origin, session);
    const owner = await ownerOf(desk);
    // Other tests of the worker may have put a second person on the staff list.
    await page.addInitScript((id) => window.localStorage.setItem('tappet.station', id), owner.id);
    await use(desk);
  },
});

/** A job that came in, was estimated, approved and built, with its hold points overridden in writing. */
async function builtJob(desk: Desk, partId: PartId | null = null): Promise<JobDossier> {
  const by = (await ownerOf(desk)).id;
  const { jobId } = await desk.counter.takeIn({
    by,
    customer: { which: 'new', name: 'Łucja Żółkiewska', phone: '312 555 0199' },
    machine: { which: 'new', kind: 'tiller', make: 'Old Mill', model: 'T-50', engine: {} },
    complaint: 'Stopped on the field.',
    leftWith: ['key'],
    signature: { name: 'Łucja Żółkiewska' },
  });
  const account = await desk.till.writeEstimate({
    by,
    jobId,
    lines: [
      { kind: 'labour', description: 'Engine rebuilt', quantity: 6500, unit: 'h', unitPrice: 6000 },
      { kind: 'part', description: 'Ring set', partId, quantity: 1000, unitPrice: 4200 },
    ],
  });
  const estimate = account.estimates.at(-1);
  if (estimate === undefined) throw new Error('The estimate is not in the account.');
  await desk.till.approve({
    by,
    jobId,
    estimateId: estimate.id,
    how: 'telephone',
    approvedBy: 'Łucja Żółkiewska',
    amount: estimate.totals.total,
  });
  await desk.counter.moveJob({ by, jobId, to: 'on-the-bench' });
  const { holdPoints } = await desk.bench.sheet({ jobId });
  for (const { key } of holdPoints)
    await desk.bench.overrideHoldPoint({ by, jobId, key, reason: 'Built elsewhere, papers seen.' });
  return desk.counter.job({ id: jobId });
}

prepared('both sign, and the work order says so', async ({ page, desk }) => {
  const by = (await ownerOf(desk)).id;
  const rings = await desk.parts.add({
    by,
    number: unique('RS'),
    description: 'Ring set',
    price: 4200,
  });
  await desk.parts.move({ by, partId: rings.id, kind: 'received', quantity: 3000 });
  const job = await builtJob(desk, rings.id);
  await page.goto(`/job/${job.code}/handover`);

  const before = page.getByRole('region', { name: 'Before it goes out' });
  await expect(before.getByText('There is no invoice yet.')).toBeVisible();
  await before.getByRole('button', { name: 'Mark it ready' }).click();
  await expect(before.getByText('It is ready to collect.')).toBeVisible();

  // The till is another page's matter.
  const invoiced = await desk.till.issueInvoice({ by, jobId: job.id });
  await desk.till.takePayment({
    by,
    jobId: job.id,
    kind: 'payment',
    method: 'cash',
    amount: invoiced.due - 1000,
  });
  await page.reload();
  await expect(before.getByText('$10.00 is due')).toBeVisible();

  await page.keyboard.press('Control+Enter');
  await expect(page.getByText('Say what was done, in a few sentences.')).toBeVisible();
  const why = page.getByRole('textbox', { name: 'Why it goes out with this' });
  await expect(why).toBeFocused();
  await page.getByRole('button', { name: 'Begin with what was billed' }).click();
  await expect(page.getByRole('textbox', { name: 'What was done' })).toHaveValue(
    'Engine rebuilt.\nParts fitted: Ring set.',
  );
  await page.getByRole('textbox', { name: 'Old parts' }).fill('returned');
  await page.getByRole('textbox', { name: 'Next service' }).fill('+6m');

  // Billed, and still on the shelf: it is issued, or the work order says why not.
  await expect(before.getByText('One part is billed and not issued.')).toBeVisible();
  await expect(before.getByRole('button', { name: 'Issue 1 part' })).toBeVisible();
  const reason = 'The mechanic has the box in the van.';
  await why.fill(reason);

  // A name that was only typed signs nothing.
  const names = page.getByRole('textbox', { name: 'Name of who signs' });
  await names.first().focus();
  await page.keyboard.press('Enter');
  await expect(names.first()).toHaveValue('Łucja Żółkiewska');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByText('Let the customer sign, or record a typed signature.')).toBeVisible();
  await recordTypedName(page, 0);
  await recordTypedName(page, 1);
  await page.keyboard.press('Control+Enter');
  const owing = page.getByRole('textbox', { name: 'owing' });
  await expect(owing).toBeFocused();

  // A changed page is signed once more.
  await owing.fill('Pays on Friday.');
  await expect(page.getByText('both sign once more')).toBeVisible();
  await recordTypedName(page, 0);
  await recordTypedName(page, 1);
  await page.keyboard.press('Control+Enter');

  await expect(page.getByText('Handed over to Łucja Żółkiewska')).toBeVisible();
  const { name } = await ownerOf(desk);
  await expect(
    page.getByText(`Customer: Łucja Żółkiewska, typed name, entered by ${name}`),
  ).toBeVisible();
  await expect(page.getByRole('button', { name: 'Print the work order' })).toBeFocused();
  const done = await desk.counter.job({ id: job.id });
  const paper = done.papers.find(({ kind }) => kind === 'work-order');
  expect(done).toMatchObject({ state: 'handed-over', stateNote: 'Pays on Friday.' });
  await expect(page.getByText(paper?.fingerprint ?? 'no work order')).toBeVisible();
  await expect(page.getByText(reason)).toBeVisible();

  // Handed over, it is still on the shelf: the job says so, and so does the list, until it is taken.
  await page.goto(`/job/${job.code}/parts`);
  await expect(page.getByRole('row').filter({ hasText: rings.number })).toContainText(
    'Ready to issue',
  );
  await page.goto('/parts/jobs');
  const billed = page.getByRole('region', { name: 'Billed, not issued' });
  const row = billed.getByRole('listitem').filter({ hasText: job.code });
  await expect(row).toContainText(reason);
  await noFaultsInEitherTheme(page);
  await row.getByRole('button', { name: 'Issue 1 part' }).click();
  await expect(row).toHaveCount(0);
  await expect
    .poll(async () => (await desk.parts.part({ id: rings.id })).part)
    .toMatchObject({ onHand: 2000, promised: 0 });
});

prepared('what still stands in the way is named, with the way to it', async ({ page, desk }) => {
  const by = (await ownerOf(desk)).id;
  const { code } = await desk.counter.takeIn({
    by,
    customer: { which: 'new', name: 'Liv Ødegård' },
    machine: { which: 'new', kind: 'mower', engine: {} },
    complaint: 'Hunts.',
    signature: { name: 'Liv Ødegård' },
  });
  await page.goto(`/job/${code}`);
  await expect(page.getByText('no entry chosen yet')).toBeVisible();
  await page.getByRole('link', { name: 'choose it at the bench' }).click();
  await expect(page).toHaveURL(`/job/${code}/bench`);
  await page.goto(`/job/${code}/handover`);
  await expect(page.getByText('Valve lash set cold')).toBeVisible();
  await page.getByRole('textbox', { name: 'What was done' }).fill('Carburettor cleaned.');
  await recordTypedName(page, 0);
  await recordTypedName(page, 1);
  await page.keyboard.press('Control+Enter');
  const alert = page.getByRole('alert');
  await expect(alert).toContainText('It is not marked ready yet');
  await expect(alert).toContainText('hold points are open');
  await expect(alert).toContainText('There is no invoice yet');
  await page.getByRole('link', { name: 'Go to the till' }).click();
  await expect(page).toHaveURL(`/job/${code}/till`);
  await page.goBack();
  await expect(page.getByRole('textbox', { name: 'What was done' })).toHaveValue(
    'Carburettor cleaned.',
  );
});

prepared('overview and handover read well', async ({ page, desk }) => {
  const job = await builtJob(desk);
  for (const [path, heading] of [
    ['', 'What came in'],
    ['/handover', 'Before it goes out'],
  ]) {
    await page.goto(`/job/${job.code}${path}`);
    await expect(page.getByRole('heading', { name: heading })).toBeVisible();
    await noFaultsInEitherTheme(page);
  }
});
