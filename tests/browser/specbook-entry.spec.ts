import { expect, test, unique } from './bench-shop.ts';
import { noFaultsInEitherTheme } from './faultless.ts';

test('a model, a source and a specification, by the keyboard alone', async ({ page, desk, by }) => {
  const model = unique('HG 210');
  expect(by).toBeTruthy();
  await page.goto('/spec-book');
  await page.getByRole('button', { name: 'Add an engine model' }).first().focus();
  const press = async (...keys: string[]) => {
    for (const key of keys) await page.keyboard.press(key);
  };
  const focused = page.locator(':focus');
  const fill = async (name: string | RegExp, text: string) => {
    await expect(focused).toHaveAccessibleName(name);
    await page.keyboard.type(text);
    await press('Tab');
  };
  await press('Enter');
  await fill('Make', 'Harrowgate');
  await fill('Model', model);
  await expect(focused).toHaveAccessibleName('Cycle');
  await press('Tab', 'Tab');
  await fill('Nominal bore, mm', '68');
  await fill('Stroke, mm', '54');
  await expect(page.getByText('Swept volume: 196.1')).toBeVisible();
  await press('Tab', 'Tab');
  await expect(focused).toHaveAccessibleName('Add to the spec book');
  await press('Enter');

  await expect(page.getByRole('heading', { level: 1 })).toHaveText(`Harrowgate ${model}`);
  await page.getByRole('button', { name: 'Coil air gap' }).focus();
  await press('Enter');
  await fill('Low', '0.2');
  await fill('High', '0.4');
  await fill('Aim', '0.3');
  await press('Tab');
  await fill('Condition', 'cold');
  await expect(focused).toHaveAccessibleName('Source');
  await press('End', 'Tab');
  await fill('Page', '31');
  await press('Tab');
  const title = unique('Harrowgate service manual');
  await fill('Title', title);
  await fill('Edition', '2nd');
  await press('Enter');

  const entry = page.getByRole('article', { name: 'Coil air gap' });
  await expect(entry).toContainText('0.2–0.4 mm');
  await expect(entry).toContainText(`Maker’s manual: ${title}, 2nd, page 31`);
  await expect(entry).toContainText('Single source');

  // Another source says the same: that confirms it.
  await entry.getByRole('button', { name: 'Confirm: Coil air gap' }).press('Enter');
  const form = page.getByRole('dialog', { name: 'Confirm a specification' });
  await form.getByRole('button', { name: 'I read the same there' }).press('Enter');
  await expect(form.getByRole('alert')).toContainText('You have vouched for this');
  await form.getByRole('combobox', { name: 'Source' }).selectOption('new');
  await form.getByRole('combobox', { name: 'Kind of source' }).selectOption('bulletin');
  await form.getByRole('textbox', { name: 'Title' }).fill(unique('Bulletin'));
  await form.getByRole('button', { name: 'I read the same there' }).press('Enter');
  await expect(entry).toContainText('Confirmed by');
  await expect
    .poll(() => desk.specbook.models({ text: model }))
    .toMatchObject([{ specifications: 1, unconfirmed: 0 }]);
});

// 17 lbf·ft on an M8 bolt of class 8.8: common practice, no source; proof load of ISO 898-1.
test('a torque is questioned while it is typed, and kept only deliberately', async ({
  page,
  desk,
  by,
}) => {
  const model = await desk.specbook.addModel({
    by,
    make: 'Harrowgate',
    model: unique('HG 300'),
    cycle: 'four-stroke',
    cylinders: 1,
  });
  const source = await desk.specbook.addSource({ by, kind: 'makers-manual', title: unique('HG') });
  await page.goto(`/spec-book/${model.id}?add=1&feature=head-bolt-torque`);
  const form = page.getByRole('dialog', { name: 'Add a specification' });
  await form.getByRole('combobox', { name: 'Unit, as printed there' }).selectOption('lbf·ft');
  await form.getByRole('combobox', { name: 'Thread' }).fill('M8 × 1.25');
  await form.getByRole('textbox', { name: 'How many' }).fill('4');
  await form.getByRole('textbox', { name: 'Low' }).fill('16');
  await form.getByRole('textbox', { name: 'High' }).fill('18');
  await expect(form.getByText('Plausible.')).toBeVisible();
  await form.getByRole('combobox', { name: 'Unit, as printed there' }).selectOption('lbf·in');
  await expect(form.getByText(/Low: below 0.3/)).toBeVisible();
  await form.getByRole('combobox', { name: 'Source' }).selectOption(source.id);
  await form.getByRole('textbox', { name: 'Page' }).press('Enter');
  await expect(form.getByRole('alert')).toContainText('doesn’t suit the thread');
  await form.getByRole('textbox', { name: 'Page' }).press('Enter');
  const book = () => desk.specbook.model({ id: model.id });
  await expect.poll(async () => (await book()).specifications).toEqual([]);
  await form.getByRole('button', { name: 'The source really says so: keep it' }).press('Enter');
  await expect(page.getByRole('article', { name: 'Head bolts' })).toContainText('16–18 lbf·in');
  await expect.poll(async () => (await book()).specifications).toHaveLength(1);
});

test('what can’t be a specification is refused at its field, and what was typed stays', async ({
  page,
  desk,
  by,
}) => {
  const model = await desk.specbook.addModel({
    by,
    make: 'Harrowgate',
    model: unique('HG 400'),
    cycle: 'two-stroke',
    cylinders: 1,
  });
  await page.goto(`/spec-book/${model.id}?add=1&feature=plug-gap`);
  const form = page.getByRole('dialog', { name: 'Add a specification' });
  await form.getByRole('textbox', { name: 'Low' }).fill('0.8');
  await form.getByRole('textbox', { name: 'High' }).fill('0.6');
  await form.getByRole('textbox', { name: 'High' }).press('Enter');
  await expect(form.getByText('The high limit lies below the low one.')).toBeVisible();
  await page.reload();
  await expect(form.getByRole('textbox', { name: 'Low' })).toHaveValue('0.8');
});

test('the spec book and the gauges have no accessibility faults', async ({ page, desk, by }) => {
  const model = await desk.specbook.addModel({
    by,
    make: 'Harrowgate',
    model: unique('HG 500'),
    cycle: 'four-stroke',
    cylinders: 1,
  });
  for (const address of [`/spec-book/${model.id}`, '/spec-book', '/gauges']) {
    await page.goto(address);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    const lacking = page.getByText(/^Not in the book yet: /);
    if (address.endsWith(model.id)) {
      // Open while the book is empty, folded away at a touch, and looked through by name.
      const idle = page.getByRole('button', { name: 'Idle speed' });
      await expect(idle).toBeVisible();
      await lacking.click();
      await expect(idle).toBeHidden();
      await lacking.click();
      await page.getByLabel('Find among them').fill('speed');
      await expect(idle).toBeVisible();
      await expect(page.getByRole('button', { name: 'Cylinder bore' })).toBeHidden();
      await page.getByLabel('Find among them').fill('');
    }
    await noFaultsInEitherTheme(page);
  }
});

test('a gauge is added, and one whose calibration ran out says so in a word', async ({
  page,
  desk,
  by,
}) => {
  const old = unique('Old micrometer');
  await desk.bench.addGauge({
    by,
    name: old,
    kind: 'micrometer',
    unit: 'mm',
    rangeLow: 0,
    rangeHigh: 25,
    resolution: 0.01,
    maxError: 0.004,
    calibrationDue: '2024-06-01',
  });
  await page.goto('/gauges');
  await expect(page.getByRole('row', { name: new RegExp(old) })).toContainText('Expired');
  await page.getByRole('button', { name: 'Add a gauge' }).first().click();
  const form = page.getByRole('dialog', { name: 'Add a gauge' });
  const name = unique('Leaves');
  await form.getByRole('textbox', { name: 'Name or number' }).fill(name);
  await form.getByRole('combobox', { name: 'Kind' }).selectOption('feeler-gauge');
  await form.getByRole('textbox', { name: 'Range from, mm' }).fill('0,05');
  await form.getByRole('textbox', { name: 'Range to, mm' }).fill('1');
  await form.getByRole('textbox', { name: 'Smallest step, mm' }).fill('a hair');
  await form.getByRole('textbox', { name: /Largest error, mm/ }).fill('0.005');
  await form.getByRole('button', { name: 'Add the gauge' }).click();
  await expect(form.getByText('Type a number, such as 0.01.')).toBeVisible();
  await form.getByRole('textbox', { name: 'Smallest step, mm' }).fill('0.01');
  await form.getByRole('button', { name: 'Add the gauge' }).click();
  await expect(page.getByRole('row', { name: new RegExp(name) })).toContainText('±0.0082 mm');
});
