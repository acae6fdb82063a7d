import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import {
  drawPaper,
  fingerprintOf,
  paperFileName,
  paperTitle,
} from '../../../electron/paper/index.ts';
import { attachedTo, faultsOf, readBarcode, readPaper } from './reading-back.ts';
import {
  claimTicket,
  clearanceSheet,
  creditNote,
  estimate,
  invoice,
  optionsSideBySide,
  receipt,
  tag,
  workOrder,
} from './samples.ts';

const papers = [
  claimTicket,
  tag,
  estimate,
  optionsSideBySide,
  invoice,
  creditNote,
  receipt,
  workOrder,
  clearanceSheet,
];

const hash = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

describe.each(papers)('$kind', (content) => {
  const fingerprint = fingerprintOf(content);
  const bytes = drawPaper(content, fingerprint);

  it('is a whole PDF at once, and the same bytes again', () => {
    expect(Buffer.from(bytes.subarray(0, 8)).toString()).toBe('%PDF-1.7');
    expect(Buffer.from(bytes.subarray(-6)).toString().trim()).toBe('%%EOF');
    expect(hash(drawPaper(content, fingerprint))).toBe(hash(bytes));
  });

  it('has nothing that a checker of PDF files objects to', () => {
    expect(faultsOf(bytes)).toBe('');
  });

  it('carries what its fingerprint is taken of, and nothing else', async () => {
    const attached = await attachedTo(bytes);
    expect([...attached.keys()]).toEqual([`${content.number}.json`]);
    const record = attached.get(`${content.number}.json`) ?? new Uint8Array();
    expect(hash(record)).toBe(fingerprint);
    expect(JSON.parse(new TextDecoder().decode(record))).toEqual(
      JSON.parse(JSON.stringify(content)),
    );
  });

  it('says what it is', async () => {
    const paper = await readPaper(bytes);
    expect(paper.info).toMatchObject({
      Title: paperTitle(content),
      Author: content.shop.name,
      CreationDate: 'D:20260327154200Z',
      Language: 'en-US',
    });
    expect(paper.structure).toContain('H1');
    expect(paper.structure).toContain('Figure');
  });

  it('has number, fingerprint and page number at the foot of every page', async () => {
    const { pages, placed } = await readPaper(bytes);
    for (const [index] of pages.entries()) {
      const onPage = placed.filter(({ page }) => page === index + 1).map(({ text }) => text);
      expect(onPage).toContain(`Page ${index + 1} of ${pages.length}`);
      expect(onPage.filter((text) => text.includes(`SHA-256 ${fingerprint}`))).toHaveLength(1);
      expect(onPage.filter((text) => text.includes(content.number)).length).toBeGreaterThan(0);
    }
  });

  it('carries a barcode that reads as the code of the job', async () => {
    expect(await readBarcode(bytes, 200)).toEqual([{ format: 'Code128', text: 'J000042' }]);
  });
});

describe('on another machine', () => {
  it.each(['Pacific/Auckland', 'America/St_Johns'])('is the same in time zone %s', (zone) => {
    const index = new URL('../../../electron/paper/index.ts', import.meta.url);
    const samples = new URL('./samples.ts', import.meta.url);
    const program = `
      import { createHash } from 'node:crypto';
      import { drawPaper } from ${JSON.stringify(index.href)};
      import { workOrder } from ${JSON.stringify(samples.href)};
      process.stdout.write(createHash('sha256').update(drawPaper(workOrder, 'f')).digest('hex'));`;
    const printed = execFileSync(process.execPath, ['--input-type=module', '-e', program], {
      env: { ...process.env, TZ: zone, LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8' },
      cwd: fileURLToPath(new URL('.', import.meta.url)),
    });
    expect(printed.toString()).toBe(hash(drawPaper(workOrder, 'f')));
  });

  it('does not depend on what was drawn before', () => {
    const before = hash(drawPaper(tag, 'f'));
    drawPaper({ ...workOrder, complaint: 'office ffi ﬁ ﬃ \u00a0 \u202f Ω Ω K Å 山田 张伟' }, 'f');
    expect(hash(drawPaper(tag, 'f'))).toBe(before);
  });
});

describe('the tag', () => {
  it('is read from pixels even at the resolution of an old label printer', async () => {
    const bytes = drawPaper(tag, fingerprintOf(tag));
    expect(await readBarcode(bytes, 96)).toEqual([{ format: 'Code128', text: 'J000042' }]);
  });

  it('stays one page whatever stands on it, and shows that something was cut', async () => {
    const full = {
      ...tag,
      customer: { ...tag.customer, name: 'Ødegård & Żółkiewska Landscape Contractors '.repeat(4) },
      complaint: 'does not start '.repeat(60),
      leftWith: Array.from({ length: 40 }, (_, index) => `piece ${index}`),
      cautions: Array.from({ length: 9 }, () => 'Ignition lead off before turning the engine.'),
    };
    const { pages, placed } = await readPaper(drawPaper(full, fingerprintOf(full)));
    expect(pages).toHaveLength(1);
    const foot = placed.find(({ text }) => text === 'Page 1 of 1');
    const inBody = placed.filter(({ text }) => !/Page 1 of 1|SHA-256/.test(text));
    expect(Math.max(...inBody.map(({ y }) => y))).toBeLessThan((foot?.y ?? 0) - 4);
    expect(placed.filter(({ text }) => text.endsWith('…')).length).toBeGreaterThanOrEqual(3);
  });
});

describe('file names', () => {
  it('are plain', () => {
    expect(paperFileName(workOrder)).toBe('work-order-W-000042.pdf');
    expect(paperFileName({ ...tag, number: 'T/42 ü' })).toBe('tag-T-42-.pdf');
  });
});
