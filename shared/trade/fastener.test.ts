import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { proofLoad, stressArea, tighteningTorque, torquePlausibility } from './fastener.ts';
import { printedProofLoads } from './proof-load-table.ts';
import { PROPERTY_CLASSES, proofStress } from './property-class.ts';

const m8 = { diameter: 8, pitch: 1.25, propertyClass: '8.8' } as const;

describe('stressArea', () => {
  it('uses the inch profile for pitches of whole threads per inch only', () => {
    const metric = (diameter: number, pitch: number) =>
      (Math.PI / 4) * (diameter - 0.938194 * pitch) ** 2;
    for (const pitch of [
      0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75,
    ]) {
      expect(stressArea({ diameter: 12, pitch })).toBe(metric(12, pitch));
    }
    for (const pitch of [2, 2.5, 3, 3.5, 4]) {
      expect(stressArea({ diameter: 36, pitch })).toBe(metric(36, pitch));
    }
    for (const perInch of [80, 32, 28, 24, 20, 18, 16, 14, 13, 12, 11, 10]) {
      const pitch = 25.4 / perInch;
      expect(stressArea({ diameter: 12.7, pitch })).toBeLessThan(metric(12.7, pitch));
    }
  });

  it('refuses what makes no sense', () => {
    expect(() => stressArea({ diameter: -8, pitch: 1.25 })).toThrow(RangeError);
    expect(() => stressArea({ diameter: 8, pitch: 0 })).toThrow(RangeError);
    expect(() => stressArea({ diameter: 1.25, pitch: 8 })).toThrow('too coarse');
    expect(() => stressArea({ diameter: Number.NaN, pitch: 1 })).toThrow(RangeError);
  });
});

describe('proofLoad', () => {
  it('gives the printed load where it is kept, and computes it elsewhere', () => {
    expect(proofLoad(m8)).toBe(21_200);
    expect(proofLoad({ ...m8, pitch: 0.75 })).toBeCloseTo(
      stressArea({ diameter: 8, pitch: 0.75 }) * 580,
      9,
    );
  });

  it('keeps no printed load that area × stress contradicts', () => {
    expect(printedProofLoads()).toHaveLength(133);
    for (const { load, ...bolt } of printedProofLoads()) {
      const computed = stressArea(bolt) * proofStress(bolt.propertyClass, bolt.diameter);
      expect(Math.abs(load / computed - 1), JSON.stringify(bolt)).toBeLessThan(0.008);
    }
  });

  it('rises with the class', () => {
    const iso = ['4.6', '5.6', '4.8', '5.8', '6.8', '8.8', '9.8', '10.9', '12.9'] as const;
    const loads = iso.map((propertyClass) => proofLoad({ ...m8, propertyClass }));
    expect(loads).toEqual(loads.toSorted((a, b) => a - b));
    const grades = ['grade 2', 'grade 5', 'grade 8'] as const;
    const inch = grades.map((propertyClass) =>
      proofLoad({ diameter: 6.35, pitch: 1.27, propertyClass }),
    );
    expect(inch).toEqual(inch.toSorted((a, b) => a - b));
  });

  it('knows where a class changes or ends', () => {
    expect(proofStress('8.8', 16)).toBe(580);
    expect(proofStress('8.8', 18)).toBe(600);
    expect(proofStress('grade 5', 25.4)).toBeGreaterThan(proofStress('grade 5', 28.575));
    expect(() => proofStress('9.8', 18)).toThrow("isn't standardised");
    for (const propertyClass of PROPERTY_CLASSES) {
      expect(proofStress(propertyClass, 6)).toBeGreaterThan(200);
      expect(() => proofStress(propertyClass, 60)).toThrow(RangeError);
    }
  });

  it('refuses an unknown class', () => {
    // A class that isn't one of the list, as it may come from a file.
    expect(() => proofLoad({ ...m8, propertyClass: '7.7' as never })).toThrow(
      'not a property class',
    );
  });
});

describe('tighteningTorque', () => {
  it('is K·d·F in N·m', () => {
    expect(tighteningTorque({ diameter: 8, preload: 15_900 })).toBeCloseTo(25.44, 10);
    expect(tighteningTorque({ diameter: 8, preload: 0 })).toBe(0);
  });

  it('refuses what makes no sense', () => {
    expect(() => tighteningTorque({ diameter: 0, preload: 1 })).toThrow(RangeError);
    expect(() => tighteningTorque({ diameter: 8, preload: -1 })).toThrow(RangeError);
    expect(() => tighteningTorque({ diameter: 8, preload: 1, nutFactor: 0 })).toThrow(RangeError);
    expect(() => tighteningTorque({ diameter: 8, preload: 1, nutFactor: 20 })).toThrow(RangeError);
    expect(() => tighteningTorque({ diameter: 8, preload: Number.NaN })).toThrow(RangeError);
  });
});

describe('torquePlausibility', () => {
  it('undoes tighteningTorque', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1.5, noNaN: true }),
        fc.double({ min: 0.08, max: 0.4, noNaN: true }),
        (share, nutFactor) => {
          const preload = share * proofLoad(m8);
          const torque = tighteningTorque({ diameter: 8, preload, nutFactor });
          expect(torquePlausibility({ ...m8, torque, nutFactor }).preloadShareOfProof).toBeCloseTo(
            share,
            10,
          );
        },
      ),
    );
  });

  it('is plausible from 0.3 to 1 of the proof load', () => {
    const atShare = (share: number) => torquePlausibility({ ...m8, torque: share * 33.92 }).verdict;
    expect(atShare(0.299)).toBe('low');
    expect(atShare(0.301)).toBe('plausible');
    expect(atShare(0.999)).toBe('plausible');
    expect(atShare(1.001)).toBe('high');
    expect(atShare(0)).toBe('low');
  });

  it('is plausible at exactly 0.3 and 1, whatever bolt and nut factor', () => {
    for (const { diameter, pitch, load } of [
      { diameter: 6, pitch: 1, load: 11_600 },
      { diameter: 8, pitch: 1.25, load: 21_200 },
      { diameter: 10, pitch: 1.5, load: 33_700 },
      { diameter: 12, pitch: 1.75, load: 48_900 },
    ])
      for (const nutFactor of [0.12, 0.15, 0.18, 0.2, 0.3])
        for (const share of [0.3, 1]) {
          // Decimals of that size are exact to the millionth.
          const torque = Number(((nutFactor * diameter * load * share) / 1000).toFixed(6));
          const bolt = { diameter, pitch, propertyClass: '8.8', nutFactor } as const;
          expect(torquePlausibility({ ...bolt, torque })).toEqual({
            preloadShareOfProof: share,
            verdict: 'plausible',
          });
        }
  });

  it('questions pound-feet written for pound-inches, and the reverse', () => {
    expect(torquePlausibility({ ...m8, torque: 23.05 * 12 }).verdict).toBe('high');
    expect(torquePlausibility({ ...m8, torque: 23.05 / 12 }).verdict).toBe('low');
  });

  it('refuses what makes no sense', () => {
    expect(() => torquePlausibility({ ...m8, torque: -1 })).toThrow(RangeError);
    expect(() => torquePlausibility({ ...m8, torque: Number.NaN })).toThrow(RangeError);
    expect(() => torquePlausibility({ ...m8, torque: 1, nutFactor: -0.2 })).toThrow(RangeError);
    expect(() => torquePlausibility({ ...m8, torque: 1, diameter: -8 })).toThrow(RangeError);
  });
});
