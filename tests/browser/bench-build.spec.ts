import type { Locator, Page } from '@playwright/test';
import { benchJob, expect, test, unique } from './bench-shop.ts';
import { noFaults, noFaultsInEitherTheme } from './faultless.ts';

/** The build at the bench: by touch alone on a tablet, and by the keyboard alone. */

test.use({ viewport: { width: 900, height: 1200 }, hasTouch: true });

const PIXEL = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);

const hand = (page: Page): Locator => page.getByRole('region', { name: 'Step at hand' });
const titled = (page: Page, name: RegExp | string) =>
  hand(page).getByRole('heading', { level: 2, name });
const button = (page: Page, name: RegExp | string) => hand(page).getByRole('button', { name });

test('quantity, wiring and photo by touch, and a step overridden with its reason', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId, engineModelId } = await benchJob(desk, by);
  const plain = { caution: '', hold: true };
  await desk.bench.reviseBuildSheet({
    by,
    engineModelId,
    steps: [
      { ...plain, key: 'gasket', kind: 'orientation', label: 'Gasket in', note: 'Bead up' },
      { ...plain, key: 'fill', kind: 'quantity', label: 'Oil filled', unit: 'ml' },
      {
        ...plain,
        key: 'loom',
        kind: 'wiring',
        label: 'Stop switch wired',
        wires: [
          { from: 'black', to: 'black' },
          { from: 'red', to: 'red/white' },
        ],
      },
      { ...plain, key: 'picture', kind: 'photo', label: 'Photo of the engine' },
      { ...plain, key: 'last', kind: 'confirm', label: 'Turned by hand' },
    ],
  });
  await page.goto(`/job/${code}/bench/build`);
  await expect(titled(page, 'Gasket in')).toBeVisible();
  await expect(hand(page)).toContainText('Bead up');
  await button(page, 'It lies this way').tap();

  await expect(titled(page, 'Oil filled')).toBeVisible();
  await hand(page).getByRole('textbox', { name: 'How much, in ml' }).fill('lots');
  await button(page, /^Filled/).tap();
  await expect(hand(page).getByRole('alert')).toContainText('how much');
  await hand(page).getByRole('textbox', { name: 'How much, in ml' }).fill('600');
  await button(page, /^Filled/).tap();

  await expect(titled(page, 'Stop switch wired')).toBeVisible();
  const joined = button(page, 'Joined as in the diagram');
  await expect(joined).toBeDisabled();
  const wire = (name: string) => hand(page).getByRole('group', { name: `${name} is joined to` });
  await wire('black').getByText('red/white', { exact: true }).tap();
  await expect(wire('black')).toContainText('the diagram says black');
  await wire('red').getByText('red/white', { exact: true }).tap();
  await expect(joined).toBeDisabled();
  await noFaults(page);
  await wire('black').getByText('black', { exact: true }).tap();
  await joined.tap();

  await expect(titled(page, 'Photo of the engine')).toBeVisible();
  await expect(button(page, /^Photo taken/)).toBeDisabled();
  const chosen = page.waitForEvent('filechooser');
  await button(page, 'Take a photo').tap();
  await (await chosen).setFiles({
    name: 'engine.txt',
    mimeType: 'image/png',
    buffer: Buffer.from('no picture'),
  });
  await expect(hand(page).getByRole('alert')).toContainText('no JPEG, PNG or WebP');
  const again = page.waitForEvent('filechooser');
  await button(page, 'Take a photo').tap();
  await (await again).setFiles({ name: 'engine.png', mimeType: 'image/png', buffer: PIXEL });
  await expect(hand(page).getByRole('img', { name: /^Taken by/ })).toBeVisible();
  await button(page, /^Photo taken/).tap();

  await expect(titled(page, 'Turned by hand')).toBeVisible();
  await button(page, /^Override/).tap();
  const dialog = page.getByRole('dialog', { name: 'Override a step of the build' });
  await dialog.getByRole('textbox').fill('no');
  await dialog.getByRole('button', { name: 'Override in my name' }).tap();
  await expect(dialog.getByText('Say why in a sentence')).toHaveCount(1);
  await dialog.getByRole('textbox').fill('Crankcase was never opened');
  await dialog.getByRole('button', { name: 'Override in my name' }).tap();
  await expect(page.getByText('Every step is done')).toBeVisible();

  const { steps } = await desk.bench.build({ jobId });
  expect(steps.map(({ key, state, detail }) => [key, state, detail])).toEqual([
    ['gasket', 'passed', ''],
    ['fill', 'passed', '600 ml'],
    ['loom', 'passed', 'black to black, red to red/white'],
    ['picture', 'passed', expect.stringMatching(/^[0-9a-f-]{36}$/)],
    ['last', 'overridden', ''],
  ]);
  const list = page.getByRole('navigation', { name: 'Steps of the build' });
  await list.getByRole('button', { name: /^Turned by hand/ }).tap();
  await expect(hand(page)).toContainText(/Overridden by .*Crankcase was never opened/);
});

test('an interrupted torque sequence goes on from the right bolt, and is begun anew', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId } = await benchJob(desk, by);
  const wrench = unique('Wrench');
  await desk.bench.addGauge({
    by,
    name: wrench,
    kind: 'torque-wrench',
    unit: 'N·m',
    rangeLow: 5,
    rangeHigh: 50,
    resolution: 0.5,
    maxError: 0.8,
  });
  await page.goto(`/job/${code}/bench/build?step=head-bolts`);
  // Two of what comes before are open: shown, not forbidden.
  await expect(hand(page)).toContainText('Out of its order: first comes');
  await expect(hand(page)).toContainText('Torque at the bolt8.5 lbf·ft');
  await hand(page).getByRole('combobox', { name: 'Wrench' }).tap();
  await page.getByRole('option', { name: wrench }).tap();
  await expect(hand(page)).toContainText('Set the wrench to11.5 N·m');
  for (const turn of [1, 2, 3, 4, 1]) await button(page, `Bolt ${turn} pulled`).tap();
  await expect(button(page, 'Bolt 2 pulled')).toBeVisible();
  await expect(hand(page)).toContainText('Stage 2 of 2');
  await expect(hand(page)).toContainText('Set the wrench to23 N·m');
  await expect
    .poll(async () => (await button(page, 'Bolt 2 pulled').boundingBox())?.height)
    .toBeGreaterThanOrEqual(64);

  // The telephone rings, the window is closed.
  await page.reload();
  await expect(hand(page)).toContainText('Stage 2 of 2');
  await expect(
    hand(page).getByRole('img', { name: /Next is bolt 2; 1 pulled to this stage/ }),
  ).toBeVisible();
  await noFaults(page);
  await expect(button(page, /^Tightened/)).toBeDisabled();
  await expect(hand(page)).toContainText('No final reading yet');
  await button(page, 'Another bolt…').tap();
  await page.getByRole('menuitem', { name: 'Bolt 4 pulled instead' }).tap();
  await expect(hand(page).getByText('Pulled so far: 6')).toBeVisible();
  for (const turn of [2, 3]) await button(page, `Bolt ${turn} pulled`).tap();
  await expect(hand(page).getByText('Every bolt was pulled to every stage.')).toBeVisible();
  const stages = async () => {
    const { features } = await desk.bench.sheet({ jobId });
    const { places = [] } = features.find(({ feature }) => feature === 'head-bolt-torque') ?? {};
    return places.map(({ readings }) => readings.map(({ text, unit }) => `${text} ${unit}`));
  };
  await expect.poll(stages).toEqual([['11.5 N·m'], ['23 N·m']]);

  await button(page, 'Begin anew…').tap();
  await page.getByRole('button', { name: 'All are loose: begin anew' }).tap();
  // By the keyboard from here: the button keeps the focus from bolt to bolt.
  await button(page, 'Bolt 1 pulled').focus();
  for (let turn = 1; turn <= 8; turn += 1) {
    await expect(button(page, `Bolt ${((turn - 1) % 4) + 1} pulled`)).toBeFocused();
    await page.keyboard.press(turn % 2 === 0 ? 'Enter' : 'Space');
  }
  await expect(hand(page).getByText('Every bolt was pulled to every stage.')).toBeVisible();
  await button(page, /^Tightened/).press('Enter');
  await expect(titled(page, /^Piston the right way/)).toBeFocused();
  const headBolts = async () =>
    (await desk.bench.build({ jobId })).steps.find(({ key }) => key === 'head-bolts');
  await expect.poll(headBolts).toMatchObject({
    state: 'passed',
    doneBefore: expect.arrayContaining([expect.stringMatching(/^Rod cap/)]),
  });
});

test('axe finds nothing on the steps', async ({ page, desk, by }) => {
  const { code, jobId } = await benchJob(desk, by);
  await desk.bench.passHoldPoint({ by, jobId, key: 'flywheel-key' });
  for (const step of ['rod-cap', 'oil', 'as-built', 'flywheel-key', 'head-bolts', 'test-run']) {
    await page.goto(`/job/${code}/bench/build?step=${step}`);
    await expect(hand(page).getByRole('heading', { level: 2 })).toBeVisible();
    await noFaultsInEitherTheme(page);
  }
  // The last one looked at: nobody ran the engine, so that nobody ticks it.
  await expect(hand(page).getByText('It was not run yet.')).toBeVisible();
  await expect(button(page, 'Test run done: pass')).toBeDisabled();
  await expect(hand(page).getByRole('link', { name: 'Write the test run down' })).toHaveAttribute(
    'href',
    `/job/${code}/bench/run`,
  );
});

test('a build sheet is amended by the keyboard alone, from the engine’s entry', async ({
  page,
  desk,
  by,
}) => {
  const { engineModelId } = await benchJob(desk, by);
  await page.goto(`/spec-book/${engineModelId}`);
  await page.getByRole('link', { name: 'Build sheet' }).press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: /^Build sheet: Quill/ })).toBeVisible();
  await expect(page.getByText('takes from the usual steps')).toBeVisible();
  const steps = page.getByRole('list', { name: 'Steps of the build sheet' });
  await steps.getByRole('button', { name: /^Move down: Piston the/ }).press('Enter');
  await expect(page.getByText(/^Piston the .*: now step 2 of/)).toBeVisible();
  await expect(steps.getByRole('button', { name: /^Move down: Piston the/ })).toBeFocused();
  await steps.getByRole('button', { name: /^Leave out: Timing marks/ }).press('Enter');
  await expect(page.getByRole('button', { name: /^Take back: Timing marks/ })).toBeVisible();

  await page.getByRole('button', { name: 'Add a step' }).press('Enter');
  const form = page.getByRole('dialog', { name: 'Add a step' });
  await expect(form.getByRole('textbox', { name: 'What is to be done' })).toBeFocused();
  await page.keyboard.type('Loom joined');
  await form.getByRole('combobox', { name: 'What it asks for' }).press('Enter');
  await page.keyboard.type('wir');
  await page.getByRole('option', { name: 'Wiring' }).click();
  await form.getByRole('textbox', { name: 'Wires of the diagram' }).fill('red = red/white\nblack');
  await form.getByRole('button', { name: 'Add it at the end' }).press('Enter');
  await expect(form.getByText('One wire a line, each colour once')).toBeVisible();
  await form.getByRole('textbox', { name: 'Wires of the diagram' }).fill('red = red/white');
  await noFaults(page);
  await form.getByRole('button', { name: 'Add it at the end' }).press('Enter');

  // What was amended and not saved is there again after the window was closed.
  await page.reload();
  await expect(steps.getByRole('button', { name: 'Edit: Loom joined' })).toBeVisible();
  await noFaults(page);
  await page.getByRole('button', { name: 'Save as revision 1' }).press('Enter');
  await expect(page.getByText(/^Revision 1, by /)).toBeVisible();
  const sheet = await desk.bench.buildSheet({ engineModelId });
  expect(sheet.steps.map(({ key }) => key).slice(0, 5)).toEqual([
    'ring-gaps',
    'piston-way',
    'rod-cap',
    'rod-bolts',
    'governor-inside',
  ]);
  expect(sheet.steps.at(-1)).toMatchObject({
    key: 'loom-joined',
    kind: 'wiring',
    wires: [{ from: 'red', to: 'red/white' }],
  });
});
