import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { drawPaper } from '../../electron/paper/index.ts';
import { openTestShop, plainIntake, type TestShop, typed } from './shop.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await openTestShop({ drawPaper });
});
afterAll(() => shop.close());

const squeezed = (text: string): string => text.normalize('NFC').replaceAll(/\s/g, '');

async function textOf(base64: string): Promise<string> {
  const pdf = await getDocument({ data: new Uint8Array(Buffer.from(base64, 'base64')) }).promise;
  const page = await pdf.getPage(1);
  const { items } = await page.getTextContent();
  return items.map((item) => ('str' in item ? item.str : '')).join(' ');
}

describe.each([
  ['Łucja Żółkiewska', 'lucja zolk'],
  ['Sigrid Ødegård', 'odegard'],
  ['Ελένη Παπαδοπούλου', 'ελενη παπα'],
  ['山田 太郎', '山田'],
  ['Zoë D’Aubigné-Núñez', 'nunez'],
  ['Київська Оксана', 'київська'],
  ['김민서', '김민'.normalize('NFD')],
  ['יַעֵל כהן', 'יעל כה'],
  ['ليلى حدّاد', 'ليلي حداد'],
  ['สมชาย ใจดี', 'ใจดี'],
  ['Nguyễn Thị Hương', 'thi huong'],
  ['İpek Işık', 'IPEK IŞIK'],
  ['Jörg Groß', 'gross'],
  ['გიორგი', 'გიორ'],
  ['Արամ', 'արամ'],
  ['அருண்', 'அரு'],
  ['রহিম', 'রহি'],
  ['संगीता', 'संगीता'],
  ['សុខ សុភា', 'សុភា'],
  ['🛠️ Werkstatt', '🛠'],
])('%s', (name, search) => {
  test('comes through store, search and paper', async () => {
    const { desk, by } = shop;
    const intake = plainIntake(by);
    const { claimTicket, customerId } = await desk.counter.takeIn({
      ...intake,
      customer: { ...intake.customer, name },
      machine: { ...intake.machine, serial: `${name} 1` },
      signature: typed(name),
    });
    expect((await desk.counter.customer({ id: customerId })).customer.name).toBe(name);
    const hits = await desk.counter.search({ text: search });
    expect(hits.map(({ kind, title }) => `${kind} ${title}`)).toContain(`customer ${name}`);
    expect(hits.some(({ kind }) => kind === 'job')).toBe(true);
    const { pdf } = await desk.office.paper({ id: claimTicket.id });
    // Readers part what is drawn with two fonts.
    expect(squeezed(await textOf(pdf))).toContain(squeezed(name));
  });
});

test('what people type is not a pattern: % finds a percent sign and nothing else', async () => {
  expect(await shop.desk.counter.findCustomers({ text: '%' })).toEqual([]);
  expect(await shop.desk.counter.findCustomers({ text: '_' })).toEqual([]);
});

test('a part is found by its number however that is spaced', async () => {
  const { desk, by } = shop;
  await desk.parts.add({ by, number: 'TL 4412-A', description: 'Gasket set', price: 100 });
  for (const text of ['tl-44 12', 'TL4412A', 'tl 4412 a', 'gasket 4412'])
    expect((await desk.parts.find({ text })).map(({ number }) => number)).toEqual(['TL 4412-A']);
  expect(await desk.parts.find({ text: 'tl 4413' })).toEqual([]);
});
