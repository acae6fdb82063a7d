import { createHash } from 'node:crypto';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { SourceId } from '../../shared/contract/ids.ts';
import { openTestShop, type TestShop } from './shop.ts';

let shop: TestShop;
let sourceId: SourceId;
beforeEach(async () => {
  shop = await openTestShop();
  const { desk, by } = shop;
  sourceId = (await desk.specbook.addSource({ by, kind: 'makers-manual', title: 'CV 170' })).id;
});
afterEach(() => shop.close());

const PDF = Buffer.from('%PDF-1.7\n%\xe2\xe3\xcf\xd3\n1 0 obj\n', 'latin1');
const PNG = Buffer.concat([Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'), Buffer.alloc(40, 7)]);

const add = (fileName: string, bytes: Buffer | string) =>
  shop.desk.specbook.addSourceFile({
    by: shop.by,
    sourceId,
    fileName,
    bytes: typeof bytes === 'string' ? bytes : bytes.toString('base64'),
  });

test('a page of a source is kept byte for byte, with its fingerprint', async () => {
  const pdf = await add('page 41.pdf', PDF);
  expect(pdf).toMatchObject({
    fileName: 'page 41.pdf',
    mediaType: 'application/pdf',
    size: PDF.length,
    sha256: createHash('sha256').update(PDF).digest('hex'),
    by: 'Ruth Okafor',
  });
  await add('photo of page 42', PNG);
  const files = await shop.desk.specbook.sourceFiles({ sourceId });
  expect(files.map(({ fileName, mediaType }) => [fileName, mediaType])).toEqual([
    ['page 41.pdf', 'application/pdf'],
    ['photo of page 42', 'image/png'],
  ]);
  const { bytes } = await shop.desk.specbook.sourceFile({ id: pdf.id });
  expect(Buffer.from(bytes, 'base64').equals(PDF)).toBe(true);
});

test('what is no page, too large or there already is refused, and nothing is written', async () => {
  await add('page 41.pdf', PDF);
  const before = shop.contents();
  const refused = async (bytes: Buffer | string, code: string) =>
    await expect(add('page.pdf', bytes)).rejects.toMatchObject({ code, defined: true });
  await refused(PDF, 'FILE_THERE_ALREADY');
  await refused(Buffer.from('<html>'), 'NOT_A_PAGE');
  await refused('', 'NOT_A_PAGE');
  await refused(`${PDF.toString('base64')}*!`, 'NOT_A_PAGE');
  await refused(Buffer.concat([PDF, Buffer.alloc(10 * 1024 * 1024)]), 'FILE_TOO_LARGE');
  await refused('A'.repeat(16 * 1024 * 1024), 'BAD_INPUT');
  expect(shop.contents()).toBe(before);
});
