import { describe, expect, it } from 'vitest';
import type { PaperContent } from '../../../electron/paper/content.ts';
import { drawPaper, fingerprintOf } from '../../../electron/paper/index.ts';
import { faultsOf, readPaper } from './reading-back.ts';
import { estimate, features, invoice, lines, totals, workOrder } from './samples.ts';

const read = (content: PaperContent) => readPaper(drawPaper(content, fingerprintOf(content)));

const [bore] = features;
const [labour] = lines;
if (bore === undefined || labour === undefined) throw new Error('The samples are incomplete.');
const [reading] = bore.readings;
if (reading === undefined) throw new Error('The samples are incomplete.');

const long = {
  ...workOrder,
  features: [
    {
      ...bore,
      readings: Array.from({ length: 60 }, (_, index) => ({
        ...reading,
        asTyped: `70.${String(100 + index)} mm`,
        remark: `Remark on ${100 + index}`,
      })),
    },
  ],
  lines: Array.from({ length: 80 }, (_, index) => ({
    ...labour,
    description: `Line number ${String(index + 1).padStart(3, '0')}`,
  })),
};

describe('usual papers', () => {
  it.each(['A4', 'Letter'] as const)('of fourteen lines are one page of %s', async (paperSize) => {
    const some = Array.from({ length: 14 }, (_, index) => lines[index % lines.length] ?? labour);
    const papers = [
      { ...estimate, findings: [], options: [{ label: '', lines: some, totals: totals }] },
      { ...invoice, lines: some },
    ];
    for (const paper of papers) {
      const content = { ...paper, shop: { ...paper.shop, paperSize } };
      expect((await read(content)).pages, paper.kind).toHaveLength(1);
    }
  });
});

describe('long papers', () => {
  it('lose no row and repeat the headings on every page of a table', async () => {
    const bytes = drawPaper(long, fingerprintOf(long));
    expect(faultsOf(bytes)).toBe('');
    const { placed, pages } = await readPaper(bytes);
    expect(pages.length).toBeGreaterThan(4);
    const pagesWith = (text: string) =>
      placed.filter((item) => item.text === text).map(({ page }) => page);
    for (const { asTyped } of long.features.flatMap(({ readings }) => readings)) {
      expect(pagesWith(asTyped), asTyped).toHaveLength(1);
    }
    for (const { description } of long.lines) {
      expect(pagesWith(description), description).toHaveLength(1);
    }
    const readingPages = new Set(
      placed.filter(({ text }) => /^70\.\d{3} mm$/.test(text)).map(({ page }) => page),
    );
    expect(readingPages.size).toBeGreaterThan(1);
    expect(new Set(pagesWith('Verdict'))).toEqual(readingPages);
    const linePages = new Set(
      placed.filter(({ text }) => text.startsWith('Line number')).map(({ page }) => page),
    );
    expect(new Set(pagesWith('Unit price'))).toEqual(linePages);
  });

  it('keep a reading and the remark on it on one page, and figures above the foot', async () => {
    const { placed, pages } = await read(long);
    const remarks = placed.filter(({ text }) => text.startsWith('Remark on'));
    expect(remarks).toHaveLength(60);
    for (const remark of remarks) {
      const typed = `${remark.text.replace('Remark on ', '70.')} mm`;
      const row = placed.find(({ text }) => text === typed);
      expect(row?.page).toBe(remark.page);
      expect(remark.y - (row?.y ?? 0)).toBeLessThan(14);
    }
    for (const { page, y, text } of placed) {
      if (/^Page |SHA-256|^Work order W/.test(text)) continue;
      expect(y, text).toBeLessThan((pages[page - 1]?.height ?? 0) - 44);
    }
  });

  it('never leave a heading alone at the foot of a page', async () => {
    for (let count = 0; count < 26; count += 1) {
      const content = {
        ...workOrder,
        workDone: Array.from({ length: count + 1 }, () => 'One more line.').join('\n'),
      };
      const { placed } = await read(content);
      const pageOf = (text: string) => placed.find((item) => item.text === text)?.page;
      expect(pageOf('Hold points')).toBe(pageOf('Connecting-rod cap the right way round'));
      expect(pageOf('Ring end gap')).toBe(pageOf('0.28 mm'));
      expect(pageOf('Deposit, card, Mar 14, 2026, 9:25 AM')).toBe(pageOf('Paid in full'));
      expect(pageOf('Subtotal')).toBe(pageOf('Paid in full'));
      expect(pageOf('Signed at handover')).toBe(pageOf('typed name, entered by Ines Ferro'));
      const print = fingerprintOf(content);
      const fingerprint = placed.find(
        ({ text }) => text.endsWith(print) && !text.startsWith('SHA-256'),
      );
      expect(pageOf('typed name, entered by Ines Ferro')).toBe(fingerprint?.page);
      // Signatures have the end of what they are put to above them.
      expect(pageOf('Next service')).toBe(pageOf('typed name, entered by Ines Ferro'));
    }
  }, 60_000);

  it('divide a row, a paragraph, a remark or cautions that no page could hold', async () => {
    const words = (name: string) =>
      Array.from({ length: 2500 }, (_, index) => `${name}${index}`).join(' ');
    const content = {
      ...workOrder,
      workDone: words('done'),
      features: [
        { ...bore, readings: [{ ...reading, remark: words('remark'), place: words('at') }] },
      ],
      lines: [{ ...labour, description: words('line') }],
      cautions: [words('caution'), 'Mind the last one.'],
    };
    const { text, placed, pages } = await read(content);
    for (const name of ['done', 'remark', 'at', 'line', 'caution']) {
      const found = text.match(new RegExp(`\\b${name}\\d+\\b`, 'g')) ?? [];
      expect(new Set(found).size, name).toBe(2500);
    }
    for (const { page, y } of placed) expect(y).toBeLessThan((pages[page - 1]?.height ?? 0) - 20);
  }, 60_000);

  it('break a word that is wider than its column, and keep all of it', async () => {
    const word = `TV${'0123456789'.repeat(30)}`;
    const content = { ...workOrder, lines: [{ ...labour, description: word }] };
    const { placed } = await read(content);
    const pieces = placed.filter(
      ({ text }) => /^(TV)?\d+$/.test(text) && text !== fingerprintOf(content),
    );
    expect(pieces.map(({ text }) => text).join('')).toBe(word);
  });
});
