import { readFileSync } from 'node:fs';
import type { StaffId } from '../../shared/contract/ids.ts';
import { expect, test, unique } from './bench-shop.ts';
import type { Desk } from './desk-client.ts';
import { looksRight } from './faultless.ts';

test.use({ viewport: { width: 900, height: 1200 } });

/** An engine with an air gap and head bolts, and a bulletin beside its manual. */
async function fennick(desk: Desk, by: StaffId) {
  const model = await desk.specbook.addModel({
    by,
    make: 'Fennick',
    model: unique('FK 200'),
    cycle: 'four-stroke',
    cylinders: 1,
    bore: 68,
    stroke: 54,
  });
  const manual = await desk.specbook.addSource({
    by,
    kind: 'makers-manual',
    title: unique('Fennick manual'),
  });
  const bulletin = await desk.specbook.addSource({
    by,
    kind: 'bulletin',
    title: unique('Fennick bulletin'),
  });
  const facts = { by, engineModelId: model.id, sourceId: manual.id, page: '12' };
  await desk.specbook.addSpecification({
    ...facts,
    feature: 'coil-air-gap',
    low: '0.2',
    high: '0.4',
    unit: 'mm',
  });
  await desk.specbook.addSpecification({
    ...facts,
    feature: 'head-bolt-torque',
    low: '22',
    high: '24',
    unit: 'N·m',
    fastener: {
      diameter: 8,
      pitch: 1.25,
      propertyClass: '8.8',
      count: 4,
      pattern: 'cross',
      stages: [0.5, 1],
    },
  });
  return { model, manual, bulletin };
}

test('two sources that disagree stand beside each other until a revision settles it', async ({
  page,
  desk,
  by,
}) => {
  const { model, bulletin } = await fennick(desk, by);
  await page.goto(`/spec-book/${model.id}`);
  const entry = page.getByRole('article', { name: 'Coil air gap' });
  await entry.getByRole('button', { name: 'Other figures: Coil air gap' }).click();
  const form = page.getByRole('dialog', { name: 'Another source prints other figures' });
  await expect(form.getByRole('textbox', { name: 'Low' })).toBeFocused();
  await page.keyboard.type('0.2');
  await form.getByRole('textbox', { name: 'High' }).fill('0.4');
  await form.getByRole('combobox', { name: 'Source' }).selectOption(bulletin.id);
  await form.getByRole('button', { name: 'Put them beside each other' }).click();
  await expect(form.getByRole('alert')).toContainText('gives the same figures');
  await form.getByRole('textbox', { name: 'High' }).fill('0.5');
  await form.getByRole('textbox', { name: 'Page' }).fill('2');
  await page.keyboard.press('Enter');

  const conflict = entry.getByRole('region', { name: 'Sources disagree' });
  await expect(conflict).toContainText('0.2–0.4 mm');
  await expect(conflict).toContainText('0.2–0.5 mm');
  await expect(conflict).toContainText(`Bulletin: ${bulletin.title}, page 2`);

  await entry.getByRole('button', { name: 'Revise: Coil air gap' }).click();
  const revise = page.getByRole('dialog', { name: 'Revise: revision 2' });
  await expect(revise.getByRole('region', { name: 'Sources disagree' })).toBeVisible();
  await revise.getByRole('textbox', { name: 'High' }).fill('0.5');
  await revise.getByRole('combobox', { name: 'Source' }).selectOption(bulletin.id);
  await revise.getByRole('button', { name: 'Add the revision' }).click();
  await expect(entry).toContainText('0.2–0.5 mm');
  await expect(conflict).toHaveCount(0);
  await entry.getByText('1 earlier revision, and what changed').click();
  await expect(entry).toContainText('High: 0.4 → 0.5');
  await expect(entry).toContainText('Source: Maker’s manual');
  await looksRight(page);
});

test('a variant holds what its family states, and says which is whose', async ({
  page,
  desk,
  by,
}) => {
  const { model, manual } = await fennick(desk, by);
  await page.goto(`/spec-book/${model.id}`);
  await page.getByRole('button', { name: 'Add a variant' }).click();
  const form = page.getByRole('dialog', { name: /Add a variant of Fennick/ });
  const name = unique('FK 200 H');
  await form.getByRole('textbox', { name: 'Model' }).fill(name);
  await form.getByRole('button', { name: 'Add to the spec book' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(`Fennick ${name}`);
  const entry = page.getByRole('article', { name: 'Coil air gap' });
  await expect(entry).toContainText(`From the family, Fennick ${model.model}`);
  await entry.getByRole('button', { name: 'State its own: Coil air gap' }).click();
  const own = page.getByRole('dialog', { name: /State its own for/ });
  await own.getByRole('textbox', { name: 'Low' }).fill('0.3');
  await own.getByRole('textbox', { name: 'High' }).fill('0.6');
  await own.getByRole('combobox', { name: 'Source' }).selectOption(manual.id);
  await own.getByRole('button', { name: 'Add the specification' }).click();
  await expect(entry).toContainText('0.3–0.6 mm');
  await expect(entry).not.toContainText('From the family');
  await expect(page.getByRole('article', { name: 'Head bolts' })).toContainText('From the family');

  await page
    .getByRole('link', { name: `Fennick ${model.model}` })
    .first()
    .click();
  await expect(page.getByRole('group', { name: 'Variants' })).toContainText(name);
  await looksRight(page);
});

test('while a torque is typed, what the same thread is tightened to elsewhere stands beside it', async ({
  page,
  desk,
  by,
}) => {
  const { model } = await fennick(desk, by);
  const other = await fennick(desk, by);
  await page.goto(`/spec-book/${other.model.id}?add=1&feature=head-bolt-torque`);
  const form = page.getByRole('dialog', { name: /Revise/ });
  const torques = form.getByRole('region', { name: 'Other torques of this thread' });
  await expect(torques).toContainText(`${model.make} ${model.model}, Head bolts`);
  await expect(torques).toContainText('22–24');
  const thread = form.getByRole('combobox', { name: 'Thread' });
  await thread.fill('7/16-20 UNF');
  await expect(
    form.getByText('The book has no other torque for a thread of 7/16-20 UNF.'),
  ).toBeVisible();
  await expect(form.getByText('11.1125 mm, pitch 1.27 mm.')).toBeVisible();
  await thread.fill('7/16-14 UNF');
  await expect(form.getByText('7/16 UNF has 20 threads per inch')).toBeVisible();
  await thread.fill('M8x1,25');
  await expect(torques).toBeVisible();
  await looksRight(page);
});

test('an engine model goes out as a file and comes in as one, with a look at it before', async ({
  page,
  desk,
  by,
}) => {
  const { model } = await fennick(desk, by);
  await page.goto(`/spec-book/${model.id}`);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export for a spreadsheet (CSV)' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toBe(`${`Fennick ${model.model}`.replaceAll(' ', '-')}.csv`);
  const text = readFileSync(await file.path(), 'utf8');

  await page.goto('/spec-book');
  await page.getByRole('button', { name: 'Import…' }).click();
  const form = page.getByRole('dialog', { name: 'Import an engine model' });
  const choose = (name: string, content: string) =>
    form.locator('input[type=file]').setInputFiles({
      name,
      mimeType: 'text/csv',
      buffer: Buffer.from(content),
    });
  await choose('wrong.csv', text.replace(',0.2,0.4,', ',wide,0.4,'));
  await expect(form.getByRole('alert')).toContainText('Line');
  await expect(form.getByRole('alert')).toContainText('wide');
  await expect(form.getByRole('button', { name: 'Take it into the book' })).toHaveCount(0);

  await choose('mended.csv', text.replace(',0.2,0.4,', ',0.2,0.45,'));
  await expect(form.getByRole('row', { name: /Coil air gap/ })).toContainText('becomes a revision');
  await expect(form.getByRole('row', { name: /Head bolts/ })).toContainText('stays as it is');
  await looksRight(page);
  await form.getByRole('button', { name: 'Take it into the book' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(`Fennick ${model.model}`);
  await expect(page.getByRole('article', { name: 'Coil air gap' })).toContainText('0.2–0.45 mm');
});

/** One red pixel (PNG specification, third edition: signature, IHDR, IDAT, IEND). */
const PIXEL =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==';

test('a page of a source is kept with it, and looked at', async ({ page, desk, by }) => {
  const { model, manual } = await fennick(desk, by);
  await page.goto(`/spec-book/${model.id}`);
  const source = page.getByRole('article', { name: `Maker’s manual: ${manual.title}` });
  const choose = (name: string, mimeType: string, buffer: Buffer) =>
    source.locator('input[type=file]').setInputFiles({ name, mimeType, buffer });
  await choose('notes.pdf', 'application/pdf', Buffer.from('not a PDF at all'));
  await expect(source.getByRole('alert')).toContainText('no PDF');
  await choose('page 12.png', 'image/png', Buffer.from(PIXEL, 'base64'));
  await source.getByRole('button', { name: 'Look at page 12.png' }).click();
  const seen = page.getByRole('dialog', { name: 'page 12.png' });
  await expect(seen.getByRole('img', { name: 'page 12.png' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(seen).toHaveCount(0);
  await looksRight(page);

  await choose('page 13.pdf', 'application/pdf', Buffer.from('%PDF-1.7\n'));
  const download = page.waitForEvent('download');
  await source.getByRole('button', { name: 'Save page 13.pdf' }).click();
  const saved = await download;
  expect(saved.suggestedFilename()).toBe('page 13.pdf');
});
