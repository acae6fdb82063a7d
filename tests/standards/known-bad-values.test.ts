import { describe, expect, it } from 'vitest';
import {
  airPressure,
  convert,
  judge,
  parseReading,
  proofLoad,
  sweptVolume,
  tighteningTorque,
} from '../../shared/trade/index.ts';

/** Published values that are wrong: the program must not agree with them. */
describe('known-bad published values', () => {
  it('G1: 38.43 in³ came of rounding too early; the true value is 0.14 % more', () => {
    const cm3 = sweptVolume({ bore: convert(3.5, 'in', 'mm'), stroke: convert(4, 'in', 'mm') });
    expect(convert(cm3, 'cm3', 'in3') - 38.43).toBeGreaterThan(0.05);
  });

  it('G4: 159 cm³ for 90 × 100 mm (jiskha 1473774381) is a quarter of the true displacement', () => {
    expect(sweptVolume({ bore: 90, stroke: 100 }) / 159).toBeCloseTo(4, 2);
  });

  it('A5: the table prints 12.682 psia at 4 000 ft; its own formula, and the standard, give 12.692', () => {
    const psia = convert(airPressure(4000 * 0.3048), 'kPa', 'psi');
    expect(Math.abs(psia - 12.692)).toBeLessThan(0.002);
    expect(Math.abs(psia - 12.682)).toBeGreaterThan(0.005);
  });

  it('L7: h8 for 30 to 50 mm printed as +0.039/+0 turns the sign: the band it makes rejects a good shaft', () => {
    const shaft = { value: 39.98, uncertainty: 0.004 };
    expect(judge({ ...shaft, low: 40 - 0.039, high: 40 }).verdict).toBe('within');
    expect(judge({ ...shaft, low: 40, high: 40 + 0.039 }).verdict).toBe('outside');
  });

  it('F9: a guide takes 75 % of yield (69 000 psi, 9 lbf·ft) where J429 tables take 75 % of proof: 8.4', () => {
    const diameter = convert(0.25, 'in', 'mm');
    const proof = proofLoad({ diameter, pitch: 1.27, propertyClass: 'grade 5' });
    const torque = tighteningTorque({ diameter, preload: 0.75 * proof, nutFactor: 0.2 });
    const footPounds = convert(torque, 'N·m', 'lbf·ft');
    expect(footPounds).toBeCloseTo(8.45, 2);
    expect(Math.abs(footPounds - 9)).toBeGreaterThan(0.5);
  });

  it("R7: the manual's '1/82' for a margin of 1/32 in falls out of its own band of at least 1/64", () => {
    const mm = (text: string) => convert(parseReading(text, 'in').value, 'in', 'mm');
    const discardUnder = mm('1/64');
    expect(judge({ value: mm('1/32'), low: discardUnder, uncertainty: 0 }).verdict).toBe('within');
    expect(judge({ value: mm('1/82'), low: discardUnder, uncertainty: 0 }).verdict).toBe('outside');
  });
});
