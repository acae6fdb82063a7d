import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BoreReading, boreReport } from './bore.ts';

const readings: readonly BoreReading[] = [
  { level: 'top', axis: 'along', value: 68.02 },
  { level: 'top', axis: 'across', value: 68.05 },
  { level: 'middle', axis: 'along', value: 68.015 },
  { level: 'middle', axis: 'across', value: 68.03 },
  { level: 'bottom', axis: 'along', value: 68.01 },
  { level: 'bottom', axis: 'across', value: 68.012 },
];
const specification = { nominal: 68, wearLimit: 68.1, oversizes: [0.5, 0.25], allowance: 0.05 };

describe('boreReport', () => {
  it('takes taper along an axis and out-of-round across a level', () => {
    expect(boreReport(readings, specification)).toEqual({
      min: 68.01,
      max: 68.05,
      taper: 0.038,
      outOfRound: 0.03,
      wear: 0.05,
      nextOversize: 0.25,
    });
  });

  it('takes the oversize that just cleans up, and passes one that just does not', () => {
    const with20 = { ...specification, allowance: 0.2 };
    expect(boreReport(readings, with20).nextOversize).toBe(0.25);
    expect(boreReport(readings, { ...specification, allowance: 0.201 }).nextOversize).toBe(0.5);
  });

  it('takes an oversize that is enough but for rounding', () => {
    const computed = { ...specification, oversizes: [0.3], allowance: 0.1 + 0.2 };
    const round = [{ level: 1, axis: 1, value: 68 }];
    expect(boreReport(round, computed).nextOversize).toBe(0.3);
    expect(boreReport(round, { ...computed, allowance: 0.300_001 }).nextOversize).toBeNull();
  });

  it('has no next oversize when none cleans up', () => {
    expect(boreReport(readings, { ...specification, oversizes: [] }).nextOversize).toBeNull();
    expect(boreReport(readings, { ...specification, oversizes: [0.05] }).nextOversize).toBeNull();
    expect(boreReport(readings, { ...specification, oversizes: [0.1] }).nextOversize).toBe(0.1);
  });

  it('reports wear below nominal as negative, and one reading without taper', () => {
    const report = boreReport([{ level: 1, axis: 1, value: 67.98 }], specification);
    expect(report).toMatchObject({ wear: -0.02, taper: 0, outOfRound: 0, min: 67.98, max: 67.98 });
  });

  it('needs no wear limit and changes nothing by it', () => {
    const { wearLimit, ...rest } = specification;
    expect(wearLimit).toBe(68.1);
    expect(boreReport(readings, rest)).toEqual(boreReport(readings, specification));
  });

  const grid = fc
    .array(fc.integer({ min: 67_000, max: 69_000 }), { minLength: 6, maxLength: 6 })
    .map((sizes) => sizes.map((size) => size / 1000));

  it('does not depend on the order of the readings', () => {
    fc.assert(
      fc.property(grid, fc.integer({ min: 0, max: 5 }), (sizes, turn) => {
        const all = sizes.map((value, i) => ({ level: Math.floor(i / 2), axis: i % 2, value }));
        const turned = [...all.slice(turn), ...all.slice(0, turn)];
        expect(boreReport(turned, specification)).toEqual(boreReport(all, specification));
      }),
    );
  });

  it('never spreads further along a line than over the whole bore', () => {
    fc.assert(
      fc.property(grid, (sizes) => {
        const all = sizes.map((value, i) => ({ level: Math.floor(i / 2), axis: i % 2, value }));
        const { min, max, taper, outOfRound } = boreReport(all, specification);
        for (const spread of [taper, outOfRound]) {
          expect(spread).toBeGreaterThanOrEqual(0);
          expect(spread).toBeLessThanOrEqual(max - min + 1e-9);
        }
        // From the smallest to the largest reading is at most one step along and one across.
        expect(taper + 2 * outOfRound).toBeGreaterThanOrEqual(max - min - 1e-9);
      }),
    );
  });

  it('refuses what makes no sense', () => {
    expect(() => boreReport([], specification)).toThrow('measure it first');
    expect(() => boreReport([{ level: 1, axis: 1, value: -68 }], specification)).toThrow(
      RangeError,
    );
    expect(() => boreReport([{ level: 1, axis: 1, value: Number.NaN }], specification)).toThrow(
      RangeError,
    );
    expect(() => boreReport([...readings, ...readings.slice(0, 1)], specification)).toThrow(
      'read twice',
    );
    for (const wrong of [
      { nominal: 0 },
      { allowance: -0.01 },
      { oversizes: [-0.25] },
      { oversizes: [Number.NaN] },
      { wearLimit: -1 },
    ]) {
      expect(() => boreReport(readings, { ...specification, ...wrong })).toThrow(RangeError);
    }
  });

  it('keeps level 1 and level "1" apart', () => {
    const both = [
      { level: 1, axis: 'a', value: 68 },
      { level: '1', axis: 'a', value: 68.01 },
    ];
    expect(boreReport(both, specification).outOfRound).toBe(0);
  });
});
