import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  LABEL_PAPERS,
  type LabelSheet,
  labelPlaces,
  overhangOf,
  PAPER_SIZES,
  USUAL_SHEETS,
} from './label-layout.ts';

const SHEET = {
  paper: 'A4',
  rows: 8,
  columns: 3,
  labelWidth: 63.5,
  labelHeight: 33.9,
  marginLeft: 7.2,
  marginTop: 12.9,
  gapAcross: 2.5,
  gapDown: 0,
} satisfies LabelSheet;

describe('labels on a sheet', () => {
  test('begin at the label that is free, and go on to the next sheet after the last', () => {
    const places = labelPlaces(SHEET, 3, 23);
    expect(places.map(({ page }) => page)).toEqual([0, 0, 1]);
    expect(places[0]?.x).toBeCloseTo(7.2 + 63.5 + 2.5);
    expect(places[0]?.y).toBeCloseTo(12.9 + 7 * 33.9);
    expect(places[2]).toEqual({ page: 1, x: 7.2, y: 12.9 });
  });

  test('a sheet has no label 0 and none after its last', () => {
    expect(() => labelPlaces(SHEET, 1, 0)).toThrow(RangeError);
    expect(() => labelPlaces(SHEET, 1, 25)).toThrow('labels 1 to 24');
  });

  test('the usual sheets fit their paper', () => {
    for (const paper of LABEL_PAPERS)
      expect(overhangOf(USUAL_SHEETS[paper])).toEqual({ across: 0, down: 0 });
  });

  test('what reaches over the edge is told in millimetres', () => {
    expect(overhangOf(SHEET)).toEqual({ across: 0, down: 0 });
    expect(overhangOf({ ...SHEET, columns: 4 }).across).toBeCloseTo(7.2 + 4 * 63.5 + 7.5 - 210);
    expect(overhangOf({ ...SHEET, paper: 'Letter' }).down).toBeCloseTo(12.9 + 8 * 33.9 - 279.4);
  });

  test('no two labels overlap, and all lie on the paper when the sheet fits', () => {
    fc.assert(
      fc.property(
        fc.record({
          paper: fc.constantFrom('A4' as const, 'Letter' as const),
          rows: fc.integer({ min: 1, max: 20 }),
          columns: fc.integer({ min: 1, max: 8 }),
          labelWidth: fc.integer({ min: 15, max: 120 }),
          labelHeight: fc.integer({ min: 8, max: 120 }),
          marginLeft: fc.integer({ min: 0, max: 20 }),
          marginTop: fc.integer({ min: 0, max: 20 }),
          gapAcross: fc.integer({ min: 0, max: 10 }),
          gapDown: fc.integer({ min: 0, max: 10 }),
        }),
        fc.integer({ min: 1, max: 40 }),
        (sheet, count) => {
          const places = labelPlaces(sheet, count, 1);
          const { width, height } = PAPER_SIZES[sheet.paper];
          const { across, down } = overhangOf(sheet);
          places.forEach((a, index) => {
            if (across === 0) expect(a.x + sheet.labelWidth).toBeLessThanOrEqual(width + 0.5);
            if (down === 0) expect(a.y + sheet.labelHeight).toBeLessThanOrEqual(height + 0.5);
            for (const b of places.slice(index + 1))
              expect(
                a.page !== b.page ||
                  Math.abs(a.x - b.x) >= sheet.labelWidth ||
                  Math.abs(a.y - b.y) >= sheet.labelHeight,
              ).toBe(true);
          });
        },
      ),
      { numRuns: 60 },
    );
  });
});
