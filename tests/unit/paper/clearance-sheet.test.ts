import { describe, expect, it } from 'vitest';
import type { ClearanceSheet } from '../../../electron/paper/content.ts';
import { drawPaper, fingerprintOf, paperFileName } from '../../../electron/paper/index.ts';
import { readPaper, rowsWith } from './reading-back.ts';
import { clearanceSheet, features, head } from './samples.ts';

const read = (content: ClearanceSheet) => readPaper(drawPaper(content, fingerprintOf(content)));

describe('the clearance sheet', () => {
  it('has every reading as typed, every source, every caution, and no bill', async () => {
    const paper = await read(clearanceSheet);
    for (const { source, readings } of features) {
      expect(paper.text).toContain(source);
      for (const { asTyped } of readings) expect(rowsWith(paper, asTyped)).not.toHaveLength(0);
    }
    for (const caution of clearanceSheet.cautions) expect(paper.text).toContain(caution);
    expect(paper.text).toContain('UNCONFIRMED SPECIFICATION');
    expect(paper.text).toContain('taper 0.050 mm');
    expect(paper.text).toContain('Recorded clearances and settings, Torvane TV 212');
    expect(paper.text).not.toContain('$');
    expect(paper.text).not.toContain('\ufffd');
  });

  it('has the fingerprint at the foot of each page, and says what it is', async () => {
    const { text, pages } = await read(clearanceSheet);
    expect(text.split(fingerprintOf(clearanceSheet))).toHaveLength(pages.length + 1);
    expect(text).toContain('fingerprint, the SHA-256');
  });

  it('tells the running hours where they are known, and nothing of them where they are not', async () => {
    expect((await read(clearanceSheet)).text).toContain('Running hours at intake 1,240.5');
    expect((await read({ ...clearanceSheet, engineHours: '' })).text).not.toContain(
      'Running hours',
    );
  });

  it('has the other unit where it was asked for', async () => {
    const converted = features.flatMap(({ readings }) =>
      readings.map((reading) => reading.converted).filter(Boolean),
    );
    expect(converted).not.toHaveLength(0);
    const { text } = await read(clearanceSheet);
    for (const words of converted) expect(text).toContain(words);
    const plain = await read({
      ...clearanceSheet,
      features: features.map((feature) => ({
        ...feature,
        readings: feature.readings.map((reading) => ({ ...reading, converted: '' })),
      })),
    });
    expect(plain.text).not.toContain('Converted');
  });

  it.each([
    ['A4', 595.28, 841.89],
    ['Letter', 612, 792],
  ] as const)('on %s stays between the margins', async (paperSize, width, height) => {
    const { pages, placed } = await read({ ...clearanceSheet, shop: { ...head.shop, paperSize } });
    expect(pages[0]?.width).toBeCloseTo(width, 1);
    expect(pages[0]?.height).toBeCloseTo(height, 1);
    for (const item of placed) {
      expect(item.x, item.text).toBeGreaterThan(40);
      expect(item.x + item.width, item.text).toBeLessThan(width - 40);
      expect(item.y, item.text).toBeLessThan(height - 20);
    }
  });

  it('is filed under its own name', () => {
    expect(paperFileName(clearanceSheet)).toBe('clearance-sheet-K-000042.pdf');
  });
});
