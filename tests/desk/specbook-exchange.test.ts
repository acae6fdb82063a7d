import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { EngineModelId } from '../../shared/contract/ids.ts';
import type { ModelFile } from '../../shared/contract/model-file.ts';
import { FEATURE_UNITS, FEATURES } from '../../shared/work/features.ts';
import { CYCLES, SOURCE_KINDS } from '../../shared/work/vocabulary.ts';
import { wearDirectionOf } from '../../shared/work/wear-direction.ts';
import { addCorvane, openTestShop, type TestShop } from './shop.ts';

const FORMS = ['json', 'csv'] as const;

let shop: TestShop;
let other: TestShop;
beforeEach(async () => {
  shop = await openTestShop();
  other = await openTestShop();
});
afterEach(() => {
  shop.close();
  other.close();
});

const exported = (from: TestShop, id: EngineModelId, format: 'json' | 'csv') =>
  from.desk.specbook.exportModel({ id, format });

const corvaneJson = async (): Promise<ModelFile> => {
  const { model } = await addCorvane(shop);
  return JSON.parse((await exported(shop, model.id, 'json')).text);
};

describe.each(FORMS)('an engine model as %s', (format) => {
  test('goes into another book as its sources print it, entered by whoever imports it', async () => {
    const { model } = await addCorvane(shop);
    const { text, fileName } = await exported(shop, model.id, format);
    expect(fileName).toBe(`Corvane-CV-170.${format}`);

    const before = other.contents();
    const preview = await other.desk.specbook.previewImport({ text, format });
    expect(other.contents()).toBe(before);
    expect(preview).toMatchObject({
      model: { make: 'Corvane', model: 'CV 170', isNew: true, differs: [] },
      newSources: ['CV 170 workshop manual'],
      issues: [],
    });
    expect(preview.specifications).toHaveLength(2);
    for (const feature of ['coil-air-gap', 'head-bolt-torque'])
      expect(preview.specifications).toContainEqual(
        expect.objectContaining({ feature, change: 'new', inBook: null, questioned: null }),
      );

    const { engineModelId, ...counts } = await other.desk.specbook.importModel({
      by: other.by,
      text,
      format,
    });
    expect(counts).toEqual({ added: 2, revised: 0, unchanged: 0 });
    const entry = await other.desk.specbook.model({ id: engineModelId });
    expect(entry.model).toMatchObject({ bore: 68, stroke: 46, cylinders: 1 });
    expect(
      entry.specifications.find(({ feature }) => feature === 'head-bolt-torque'),
    ).toMatchObject({
      low: '16',
      high: '18',
      unit: 'lbf·ft',
      page: '22',
      standing: 'single-source',
      fastener: { diameter: 8, pitch: 1.25, stages: [0.5, 1] },
      source: { title: 'CV 170 workshop manual', edition: '3rd edition' },
    });
    expect((await exported(other, engineModelId, format)).text).toBe(text);
  });

  test('taken in twice it changes nothing the second time', async () => {
    const { model } = await addCorvane(shop);
    const { text } = await exported(shop, model.id, format);
    const { by, desk } = shop;
    expect(await desk.specbook.importModel({ by, text, format })).toEqual({
      engineModelId: model.id,
      added: 0,
      revised: 0,
      unchanged: 2,
    });
    expect(
      await desk.specbook.revisions({ engineModelId: model.id, feature: 'coil-air-gap' }),
    ).toHaveLength(1);
    expect(await desk.specbook.sources({})).toHaveLength(1);
  });
});

test('what differs becomes a revision, and the preview says in what', async () => {
  const { desk, by } = shop;
  const file = await corvaneJson();
  const [gap] = file.specifications.filter(({ feature }) => feature === 'coil-air-gap');
  if (gap === undefined) throw new Error('The file lacks the air gap.');
  gap.high = '0.5';
  gap.condition = 'cold';
  file.model.note = 'From the shop across the river';
  const text = JSON.stringify(file);
  const preview = await desk.specbook.previewImport({ text, format: 'json' });
  expect(preview.model).toMatchObject({ isNew: false, differs: ['note'] });
  expect(preview.specifications.find(({ feature }) => feature === 'coil-air-gap')).toMatchObject({
    change: 'revised',
    changes: ['high', 'condition'],
    inBook: { low: '0.2', high: '0.4', unit: 'mm' },
    inFile: { low: '0.2', high: '0.5', unit: 'mm' },
  });
  const { engineModelId, ...counts } = await desk.specbook.importModel({
    by,
    text,
    format: 'json',
  });
  expect(counts).toEqual({ added: 0, revised: 1, unchanged: 1 });
  const [latest] = await desk.specbook.revisions({ engineModelId, feature: 'coil-air-gap' });
  expect(latest).toMatchObject({ revision: 2, high: '0.5' });
  expect((await desk.specbook.model({ id: engineModelId })).model.note).toBe('');
});

describe('a file that can’t be taken in is refused whole, with the line of each fault', () => {
  const HEADING =
    'make,model,cycle,cylinders,feature,low,high,unit,source_kind,source_title,page\n';
  const GOOD = 'Fennick,FK 9,four-stroke,1,bore,68.00,68.04,mm,makers-manual,FK manual,4\n';

  const refused = async (text: string, format: 'json' | 'csv') => {
    const { desk, by } = other;
    const before = other.contents();
    const { issues } = await desk.specbook.previewImport({ text, format });
    await expect(desk.specbook.importModel({ by, text, format })).rejects.toMatchObject({
      code: 'FILE_FAULTY',
      data: { issues },
    });
    expect(other.contents()).toBe(before);
    return issues.map(({ line, path }) => ({ line, path }));
  };

  // Each mended text and what is wrong in it: on which line of the text, and where.
  test.each([
    [
      'a limit that is no number',
      `${GOOD}Fennick,FK 9,,,plug-gap,wide,0.8,mm,bulletin,B 1,1\n`,
      [{ line: 3, path: 'specifications.1.low' }],
    ],
    [
      'limits the wrong way round',
      GOOD.replace('68.00', '69'),
      [{ line: 2, path: 'specifications.0.high' }],
    ],
    [
      'an unknown feature',
      `${GOOD}${GOOD.replace('bore', 'boar')}`,
      [{ line: 3, path: 'feature' }],
    ],
    ['an unknown unit', GOOD.replace(',mm,', ',cubits,'), [{ line: 2, path: 'unit' }]],
    [
      'no source',
      GOOD.replace('makers-manual,FK manual', ','),
      [
        { line: 2, path: 'source_kind' },
        { line: 2, path: 'source_title' },
      ],
    ],
    ['one feature twice', `${GOOD}\n${GOOD}`, [{ line: 4, path: 'specifications.1.feature' }]],
    [
      'two engines',
      `${GOOD}${GOOD.replace('FK 9', 'FK 8').replace('bore', 'plug-gap')}`,
      [{ line: 3, path: 'model' }],
    ],
    ['too few fields', `${GOOD}Fennick,FK 9\n`, [{ line: 3, path: '' }]],
    ['an open quotation mark', `${GOOD}"Fennick,FK 9`, [{ line: 3, path: '' }]],
    ['five cylinders', GOOD.replace(',1,', ',5,'), [{ line: 2, path: 'cylinders' }]],
  ])('CSV: %s', async (_, lines, issues) => {
    expect(await refused(HEADING + lines, 'csv')).toEqual(issues);
  });

  test('CSV: a line broken inside a quotation is counted as a spreadsheet’s editor counts it', async () => {
    const text = `${HEADING.replace('page', 'condition')}${GOOD.replace(',4\n', ',"cold,\nand dry"\n')}${GOOD.replace('bore', 'boar').replace(',4\n', ',hot\n')}`;
    expect(await refused(text, 'csv')).toEqual([{ line: 4, path: 'feature' }]);
  });

  test('CSV: a heading of another table', async () => {
    expect(await refused('name,phone\nGreta,555\n', 'csv')).toContainEqual({
      line: 1,
      path: 'feature',
    });
  });

  test('CSV: what a spreadsheet in another country makes of it is read all the same', async () => {
    const text = `\uFEFF${HEADING}${GOOD}`.replaceAll(',', ';').replaceAll('.0', ',0');
    const preview = await other.desk.specbook.previewImport({ text, format: 'csv' });
    expect(preview.issues).toEqual([]);
    expect(preview.specifications[0]?.inFile).toEqual({ low: '68,00', high: '68,04', unit: 'mm' });
  });

  test('JSON: text that breaks off, another format, another version', async () => {
    const file = await corvaneJson();
    const text = JSON.stringify(file, null, 2);
    expect(await refused(text.slice(0, text.indexOf('"sources"')), 'json')).toEqual([
      { line: 14, path: '' },
    ]);
    expect(await refused('[1]', 'json')).toEqual([{ line: null, path: 'format' }]);
    expect(await refused(JSON.stringify({ ...file, version: 2 }), 'json')).toEqual([
      { line: null, path: 'version' },
    ]);
  });

  test('JSON: an unknown source, an unknown field, a family that isn’t there', async () => {
    const file = await corvaneJson();
    const { specifications } = file;
    const wrong = {
      ...file,
      model: { ...file.model, variantOf: { make: 'Corvane', model: 'CV' } },
      specifications: specifications.map((each) => ({ ...each, source: 'nowhere' })),
    };
    expect(await refused(JSON.stringify(wrong), 'json')).toEqual([
      { line: null, path: 'model.variantOf' },
      { line: null, path: 'specifications.0.source' },
      { line: null, path: 'specifications.1.source' },
    ]);
    expect(await refused(JSON.stringify({ ...file, colour: 'red' }), 'json')).toEqual([
      { line: null, path: '' },
    ]);
  });
});

test('a torque that doesn’t suit its thread is taken in only deliberately', async () => {
  const { desk, by } = other;
  const file = await corvaneJson();
  const text = JSON.stringify(file).replaceAll('lbf·ft', 'lbf·in');
  const preview = await desk.specbook.previewImport({ text, format: 'json' });
  expect(
    preview.specifications.find(({ feature }) => feature === 'head-bolt-torque')?.questioned,
  ).toMatchObject({ verdict: 'low' });
  await expect(desk.specbook.importModel({ by, text, format: 'json' })).rejects.toMatchObject({
    code: 'TORQUES_QUESTIONED',
    data: { features: ['head-bolt-torque'] },
  });
  await desk.specbook.importModel({ by, text, format: 'json', keepQuestioned: true });
  expect(await desk.specbook.models({ text: 'CV 170' })).toHaveLength(1);
});

test('a variant’s file holds what it states itself, and finds its family in the other book', async () => {
  const { model, manual } = await addCorvane(shop);
  const variant = await shop.desk.specbook.addModel({
    by: shop.by,
    make: 'Corvane',
    model: 'CV 170 H',
    cycle: 'four-stroke',
    cylinders: 1,
    variantOf: model.id,
  });
  await shop.desk.specbook.addSpecification({
    by: shop.by,
    engineModelId: variant.id,
    feature: 'plug-gap',
    low: '0.6',
    high: '0.7',
    unit: 'mm',
    sourceId: manual.id,
  });
  for (const format of FORMS) {
    const into = await openTestShop();
    const family = await exported(shop, model.id, format);
    const own = await exported(shop, variant.id, format);
    const { desk, by } = into;
    await desk.specbook.importModel({ by, text: family.text, format });
    const { engineModelId, added } = await desk.specbook.importModel({
      by,
      text: own.text,
      format,
    });
    expect(added).toBe(1);
    const entry = await desk.specbook.model({ id: engineModelId });
    expect(entry.model).toMatchObject({ bore: 68, variantOf: { model: 'CV 170' } });
    expect(entry.specifications).toHaveLength(3);
    expect((await exported(into, engineModelId, format)).text).toBe(own.text);
    into.close();
  }
});

/** What people write into notes, among it what breaks a table or runs in a spreadsheet. */
const words = (maximum: number) =>
  fc
    .oneof(
      fc.string({ unit: 'grapheme', maxLength: maximum }),
      fc.stringMatching(/^['=+\-@",;\n\r\t a-z0-9.]{0,20}$/),
    )
    .map((text) =>
      text
        .normalize('NFC')
        .replace(/[^\P{Cc}\n\t\r]/gu, '')
        .trim()
        .slice(0, maximum)
        .toWellFormed()
        .trim(),
    );

const named = (maximum: number) => words(maximum).map((text) => (text === '' ? 'X 1' : text));

const thread = fc.constantFrom(
  { designation: '', diameter: 5, pitch: 0.8 },
  { designation: '', diameter: 7.9375, pitch: 1.25 },
  { designation: 'M6', diameter: 6, pitch: 1 },
  { designation: 'M8×1,25', diameter: 8, pitch: 1.25 },
  { designation: '5/16"-18 UNC', diameter: 7.9375, pitch: 1.4111 },
);

const bolted = fc.record({
  propertyClass: fc.constantFrom('8.8', '10.9', 'grade 5'),
  count: fc.integer({ min: 1, max: 24 }),
  pattern: fc.constantFrom('cross' as const, 'spiral' as const, 'in-line' as const),
  stages: fc.constantFrom<number[]>([1], [0.5, 1], [0.33, 0.66, 1]),
});

const fastener = fc.tuple(thread, bolted).map(([named, rest]) => ({ ...named, ...rest }));

const anyFile: fc.Arbitrary<ModelFile> = fc
  .record({
    model: fc.record({
      make: named(20),
      model: named(20),
      cycle: fc.constantFrom(...CYCLES),
      cylinders: fc.integer({ min: 1, max: 4 }),
      bore: fc.option(fc.integer({ min: 1, max: 40_000 }).map((hundredths) => hundredths / 100)),
      stroke: fc.option(fc.integer({ min: 1, max: 40_000 }).map((hundredths) => hundredths / 100)),
      note: words(200),
    }),
    sources: fc.uniqueArray(
      fc.record({
        kind: fc.constantFrom(...SOURCE_KINDS),
        title: named(40),
        edition: words(20),
        date: fc.constantFrom(null, '2021-04-01', '1998-12-31'),
      }),
      { minLength: 1, maxLength: 4, selector: (each) => JSON.stringify(each) },
    ),
    specifications: fc.uniqueArray(
      fc.record({
        feature: fc.constantFrom(...FEATURES),
        low: fc.constantFrom('', '1', '1.50', '1,5', '-0.2'),
        high: fc.constantFrom('2', '2.50', '3'),
        aim: fc.constantFrom('', '2'),
        wearLimit: fc.constantFrom('', '+0.10'),
        condition: words(60),
        page: words(12),
        fastener,
        source: fc.nat(),
      }),
      { maxLength: 8, selector: ({ feature }) => feature },
    ),
  })
  .map(({ model, sources, specifications }) => ({
    format: 'tappet.engine-model',
    version: 1,
    model: { ...model, variantOf: null },
    sources: sources.map((each, index) => ({ key: `s${index}`, ...each })),
    specifications: specifications.map((each) => ({
      ...each,
      // What wears down from nothing or so has no room for any wear.
      wearLimit: wearDirectionOf(each.feature) === 'down' ? '' : each.wearLimit,
      unit: FEATURE_UNITS[each.feature],
      source: `s${each.source % sources.length}`,
      fastener: FEATURE_UNITS[each.feature] === 'N·m' ? each.fastener : null,
    })),
  }));

test('whatever is in an entry comes back from its file, in both forms', {
  timeout: 60_000,
}, async () => {
  const third = await openTestShop();
  const into = { json: other, csv: third };
  let made = 0;
  await fc.assert(
    fc.asyncProperty(anyFile, async ({ model, ...rest }) => {
      made += 1;
      const file = { ...rest, model: { ...model, model: `${model.model}#${made}` } };
      const taken = await shop.desk.specbook.importModel({
        by: shop.by,
        text: JSON.stringify(file),
        format: 'json',
        keepQuestioned: true,
      });
      const json = await exported(shop, taken.engineModelId, 'json');
      for (const format of FORMS) {
        const { text } = await exported(shop, taken.engineModelId, format);
        const { desk, by } = into[format];
        const { engineModelId } = await desk.specbook.importModel({
          by,
          text,
          format,
          keepQuestioned: true,
        });
        expect((await exported(into[format], engineModelId, 'json')).text).toBe(json.text);
        expect((await exported(into[format], engineModelId, format)).text).toBe(text);
      }
      const kept: ModelFile = JSON.parse(json.text);
      expect(kept.model).toEqual(file.model);
      expect(titled(kept)).toEqual(titled(file));
    }),
    { numRuns: 60 },
  );
  third.close();
});

/** A file's specifications with their sources written out, in an order of their own. */
const titled = (file: ModelFile) =>
  file.specifications
    .map(({ source, ...each }) => {
      const found = file.sources.find(({ key }) => key === source);
      return { ...each, source: found && { ...found, key: '' } };
    })
    .toSorted((a, b) => (a.feature < b.feature ? -1 : 1));
