import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compressionRatio, sweptVolume } from './displacement.ts';

describe('sweptVolume', () => {
  it('is π/4·b²·s in cm³, for each cylinder', () => {
    expect(sweptVolume({ bore: 68, stroke: 54 })).toBeCloseTo(196.11, 2);
    expect(sweptVolume({ bore: 68, stroke: 54, cylinders: 2 })).toBeCloseTo(392.22, 2);
  });

  it('grows with the square of the bore and with the stroke', () => {
    const mm = fc.double({ min: 10, max: 200, noNaN: true });
    fc.assert(
      fc.property(mm, mm, (bore, stroke) => {
        const one = sweptVolume({ bore, stroke });
        expect(sweptVolume({ bore: 2 * bore, stroke }) / one).toBeCloseTo(4, 10);
        expect(sweptVolume({ bore, stroke: 3 * stroke }) / one).toBeCloseTo(3, 10);
      }),
    );
  });

  it('refuses what makes no sense', () => {
    expect(() => sweptVolume({ bore: -68, stroke: 54 })).toThrow(RangeError);
    expect(() => sweptVolume({ bore: 68, stroke: 0 })).toThrow(RangeError);
    expect(() => sweptVolume({ bore: Number.NaN, stroke: 54 })).toThrow(RangeError);
    expect(() => sweptVolume({ bore: 68, stroke: 54, cylinders: 1.5 })).toThrow(RangeError);
    expect(() => sweptVolume({ bore: 68, stroke: 54, cylinders: 0 })).toThrow(RangeError);
  });
});

describe('compressionRatio', () => {
  const engine = { bore: 68, stroke: 54, chamber: 26 };

  it('adds gasket and deck to the chamber and takes the dome off', () => {
    const swept = 196.1105;
    expect(compressionRatio(engine)).toBeCloseTo((swept + 26) / 26, 4);
    const disc = 3.631681; // cm³ per mm of height at 68 mm
    const left = 26 + 70 ** 2 * 0.25 * Math.PI * 1.2e-3 + disc * 0.3 - 1.5;
    expect(
      compressionRatio({
        ...engine,
        gasketBore: 70,
        gasketThickness: 1.2,
        deckClearance: 0.3,
        pistonDome: 1.5,
      }),
    ).toBeCloseTo((swept + left) / left, 4);
  });

  it('takes the bore for the hole of the gasket when none is stated', () => {
    expect(compressionRatio({ ...engine, gasketThickness: 1 })).toBe(
      compressionRatio({ ...engine, gasketThickness: 1, gasketBore: 68 }),
    );
  });

  it('falls with a dish and rises with a piston that stands proud', () => {
    expect(compressionRatio({ ...engine, pistonDome: -2 })).toBeLessThan(compressionRatio(engine));
    expect(compressionRatio({ ...engine, deckClearance: -0.2 })).toBeGreaterThan(
      compressionRatio(engine),
    );
  });

  it('refuses what makes no sense', () => {
    expect(() => compressionRatio({ ...engine, chamber: 0 })).toThrow('left above the piston');
    expect(() => compressionRatio({ ...engine, pistonDome: 26 })).toThrow('left above the piston');
    expect(() => compressionRatio({ ...engine, gasketBore: 67 })).toThrow('smaller than the bore');
    expect(() => compressionRatio({ ...engine, chamber: -1 })).toThrow(RangeError);
    expect(() => compressionRatio({ ...engine, gasketThickness: -1 })).toThrow(RangeError);
    expect(() => compressionRatio({ ...engine, bore: -1 })).toThrow(RangeError);
    expect(() => compressionRatio({ ...engine, deckClearance: Number.NaN })).toThrow(RangeError);
  });
});
