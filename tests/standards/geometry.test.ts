import { describe, expect, it } from 'vitest';
import {
  airPressure,
  CRANKING_EXPONENT,
  compressionRatio,
  convert,
  crankingPressure,
  EXPANSION_COEFFICIENTS,
  REFERENCE_TEMPERATURE,
  sweptVolume,
  toReference,
} from '../../shared/trade/index.ts';

const inches = (size: number) => convert(size, 'in', 'mm');

describe('displacement and compression ratio', () => {
  it('G1: 3.5 × 4 in is 38.4845 in³ (NAVEDTRA 14264 ch. 2 prints 38.43 with π = 3.14; read, computed)', () => {
    const cm3 = sweptVolume({ bore: inches(3.5), stroke: inches(4) });
    expect(cm3).toBeCloseTo(630.65, 2);
    expect(convert(cm3, 'cm3', 'in3')).toBeCloseTo(38.4845, 4);
    expect(convert(cm3, 'cm3', 'in3') / 38.43).toBeCloseTo(1, 2);
  });

  it('G2: 4.00 × 3.52 in, 8 cylinders, is 353.86 in³ (oldgreasemonkey.com, read, computed)', () => {
    const cm3 = sweptVolume({ bore: inches(4), stroke: inches(3.52), cylinders: 8 });
    expect(Math.abs(convert(cm3, 'cm3', 'in3') - 353.86)).toBeLessThan(0.02);
  });

  it('G3: 20 in³ pressed into 1 in³ is 20:1, total by clearance (Oilfield Glossary, read)', () => {
    const bore = inches(3);
    const stroke = convert(19, 'in3', 'cm3') / sweptVolume({ bore, stroke: 1 });
    const chamber = convert(1, 'in3', 'cm3');
    expect(compressionRatio({ bore, stroke, chamber })).toBeCloseTo(20, 10);
  });

  it('G4: 90 × 100 mm with 65 cm³ left is 636.17 cm³ and 10.787:1 (inputs read, value computed)', () => {
    expect(sweptVolume({ bore: 90, stroke: 100 })).toBeCloseTo(636.17, 2);
    expect(compressionRatio({ bore: 90, stroke: 100, chamber: 65 })).toBeCloseTo(10.787, 3);
  });
});

describe('compression without loss of heat', () => {
  const pressureRatio = (ratio: number) =>
    crankingPressure({ compressionRatio: ratio, altitude: 0, exponent: 1.4 }) / airPressure(0) + 1;

  it('G5: 240 to 40 cm³ from 1.00e5 Pa reaches 1.23e6 Pa (OpenStax University Physics 2 §3.6; from memory, computed)', () => {
    expect((1e5 * pressureRatio(240 / 40)).toPrecision(3)).toBe('1.23e+6');
    // T2/T1 = (p2/p1)·(V2/V1): 293 K becomes 600 K.
    expect(((293 * pressureRatio(6)) / 6).toPrecision(3)).toBe('600');
  });

  it('G6: 540 to 30 cm³ from 300 K reaches 953 K (justaaa.com 1224, read, computed)', () => {
    expect(((300 * pressureRatio(18)) / 18).toPrecision(3)).toBe('953');
  });

  it('G7: 8:1 from 1 atm and 293 K reaches 18.38 atm and 673.1 K (inputs read, computed)', () => {
    expect(pressureRatio(8)).toBeCloseTo(18.38, 2);
    expect((293 * pressureRatio(8)) / 8).toBeCloseTo(673.1, 1);
  });

  it('R6: the default exponent puts common low ratios at the 90 to 110 psi of TM 5-1185 §137 (rule read)', () => {
    expect(CRANKING_EXPONENT).toBe(1.2);
    for (const ratio of [5.2, 5.5, 5.9]) {
      const psi = convert(crankingPressure({ compressionRatio: ratio, altitude: 0 }), 'kPa', 'psi');
      expect(psi).toBeGreaterThan(90);
      expect(psi).toBeLessThan(110);
    }
  });
});

describe('thermal expansion', () => {
  it('T1: 500.035 mm of steel at 23.7 °C is 500.013 mm (NPL FAQ, read, computed)', () => {
    expect(toReference(500.035, 23.7, 11.7e-6)).toBeCloseTo(500.01335, 5);
  });

  it('T2: sizes hold at 20 °C (ISO 1:2016, read by way of the NPL FAQ)', () => {
    expect(REFERENCE_TEMPERATURE).toBe(20);
  });

  it('T3: aluminium 23.1 and steel 11.5 millionths (Swyt, J. Res. NIST 99, 31, read)', () => {
    const alphaOf = (name: string) =>
      EXPANSION_COEFFICIENTS.find(({ material }) => material === name)?.alpha;
    expect(alphaOf('aluminium')).toBe(23.1e-6);
    expect(alphaOf('steel')).toBe(11.5e-6);
  });

  it('T4: two tables differ for grey iron, so every coefficient carries its source (read)', () => {
    const apart = toReference(68.03, 32, 10.8e-6) - toReference(68.03, 32, 11.4e-6);
    expect(apart).toBeCloseTo(0.00049, 5);
    expect(EXPANSION_COEFFICIENTS.every(({ source }) => source.length > 0)).toBe(true);
  });

  it('T5: a bore of 68.030 mm read at 32 °C is 68.0212 mm (computed)', () => {
    expect(toReference(68.03, 32, 10.8e-6)).toBeCloseTo(68.0212, 4);
  });
});
