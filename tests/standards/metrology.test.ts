import { describe, expect, it } from 'vitest';
import { clearance, gaugeUncertainty, judge, normalBelow } from '../../shared/trade/index.ts';

describe('decision rules', () => {
  it('M1: JCGM 106:2012 cl. 7, Zener diode, p = 0.92 (from memory, computed)', () => {
    const { conformance } = judge({ value: -5.47, high: -5.4, uncertainty: 2 * 0.05 });
    expect(Math.abs(conformance - 0.919)).toBeLessThan(0.0005);
    expect(conformance.toFixed(2)).toBe('0.92');
  });

  it('M2: JCGM 106:2012 cl. 7, burst strength, p = 0.99 (from memory, computed)', () => {
    const { conformance } = judge({ value: 509.7, low: 490, uncertainty: 2 * 8.6 });
    expect(Math.abs(conformance - 0.989)).toBeLessThan(0.0005);
    expect(conformance.toFixed(2)).toBe('0.99');
  });

  it('M3: JCGM 106 cl. 8.3, guard band w = U: acceptance limit A = T − U (from memory; ILAC-G8 §4.1 read)', () => {
    const upper = { high: 50, uncertainty: 0.04 };
    expect(judge({ value: 49.96, ...upper }).verdict).toBe('within');
    expect(judge({ value: 49.9601, ...upper }).verdict).toBe('too-close');
    const lower = { low: 50, uncertainty: 0.04 };
    expect(judge({ value: 50.04, ...lower }).verdict).toBe('within');
    expect(judge({ value: 50.0399, ...lower }).verdict).toBe('too-close');
  });

  it.each([
    [0, 0.5],
    [0.83, 0.05],
    [1, 0.025],
    [1.5, 0.0016],
    [3, 1e-6],
  ])(
    'M4: ILAC-G8:09/2019, guard band of %d U: false acceptance at most %d (read)',
    (guard, risk) => {
      const { conformance } = judge({ value: 10 - guard * 0.2, high: 10, uncertainty: 0.2 });
      expect(1 - conformance).toBeLessThanOrEqual(risk);
    },
  );

  it('M5: 10 ± 1 with U = 0.2 accepts 9.2 to 10.8 at a guard band of U (inputs read, limits computed)', () => {
    const verdictOf = (value: number) =>
      judge({ value, low: 9, high: 11, uncertainty: 0.2 }).verdict;
    expect(['9.19', '9.2', '10.8', '10.81'].map((text) => verdictOf(Number(text)))).toEqual([
      'too-close',
      'within',
      'within',
      'too-close',
    ]);
  });

  it('M6: ISO 14253-1:2017 default: 1.645 u leaves 5 % (from memory, computed)', () => {
    expect(normalBelow(1.645)).toBeCloseTo(0.95, 4);
    const { conformance } = judge({ value: 10 - 1.645 * 0.1, high: 10, uncertainty: 0.2 });
    expect(conformance).toBeCloseTo(0.95, 4);
  });

  it('M7: micrometer, ±0.003 mm, U 0.001, error 0.0017: conforming (talalspecialbolt.com, read)', () => {
    expect(judge({ value: 0.0017, low: -0.003, high: 0.003, uncertainty: 0.001 }).verdict).toBe(
      'within',
    );
  });

  it('M8: limit 50.05, reading 50.06, U 0.04: neither is proven (inputs read, verdict computed)', () => {
    expect(judge({ value: 50.06, high: 50.05, uncertainty: 0.04 }).verdict).toBe('too-close');
  });

  it('M8: beyond the limit by more than U it is proven not to conform (ISO 14253-1, from memory)', () => {
    const verdictOf = (value: number) => judge({ value, high: 50.05, uncertainty: 0.04 }).verdict;
    expect(verdictOf(50.09)).toBe('too-close');
    expect(verdictOf(50.0901)).toBe('outside');
    const under = (value: number) => judge({ value, low: 50.05, uncertainty: 0.04 }).verdict;
    expect(under(50.01)).toBe('too-close');
    expect(under(50.0099)).toBe('outside');
  });

  it('M8a: the same micrometer at 0.0025: conformity is not proven (read)', () => {
    expect(judge({ value: 0.0025, low: -0.003, high: 0.003, uncertainty: 0.001 }).verdict).toBe(
      'too-close',
    );
  });

  it('M8b: 20 % guard band on ±0.5 Ω accepts within ±0.4 Ω (read)', () => {
    const verdictOf = (value: number) =>
      judge({ value, low: -0.5, high: 0.5, uncertainty: 0.1 }).verdict;
    expect(verdictOf(0.4)).toBe('within');
    expect(verdictOf(-0.4)).toBe('within');
    expect(verdictOf(0.401)).toBe('too-close');
  });
});

/** Source: JCGM 100:2008 (GUM). */
describe('uncertainty', () => {
  it('M9: 4.3.7, half-width 0.40e-6 gives u = 0.23e-6 (from memory, computed)', () => {
    const expanded = gaugeUncertainty({ resolution: 0, maxError: 0.4e-6 });
    expect((expanded / 2 / 1e-6).toFixed(2)).toBe('0.23');
  });

  it('M10: a step of 0.001 mm gives u = 0.000288675 mm (talalspecialbolt.com, read; computed)', () => {
    expect(gaugeUncertainty({ resolution: 0.001, maxError: 0 }) / 2).toBeCloseTo(0.000288675, 9);
  });

  it('M11, M12: H.1, components of 25, 9.7, 2.9 and 16.6 nm combine to 32 nm (read; 31.7 computed)', () => {
    const part = (uncertainty: number) => ({ value: 0, uncertainty });
    const pairs = [clearance(part(25), part(9.7)), clearance(part(2.9), part(16.6))] as const;
    const combined = clearance(...pairs).uncertainty;
    expect(combined).toBeCloseTo(31.7, 1);
    expect(combined.toFixed(0)).toBe('32');
  });

  it('M12: H.1, 5.8, 3.9 and 6.7 nm combine to 9.7 nm (read)', () => {
    const first = clearance({ value: 0, uncertainty: 5.8 }, { value: 0, uncertainty: 3.9 });
    expect(clearance(first, { value: 0, uncertainty: 6.7 }).uncertainty.toFixed(1)).toBe('9.7');
  });

  it('M14: a micrometer of 50 to 75 mm may err by 5 µm (DIN 863-1 table, read)', () => {
    // With a step of 0.01 mm: u² = 5²/3 + 5²/3 µm², U = 2u (computed).
    expect(gaugeUncertainty({ resolution: 0.01, maxError: 0.005 })).toBeCloseTo(0.008165, 6);
  });
});

/** Source: ISO 286-1 and -2 tables as reproduced by distributors (read); clearances computed. */
describe('limits and fits', () => {
  it('L6, L7, L8: 68 H7/g6 has a clearance of 10 to 59 µm', () => {
    const exact = (value: number) => ({ value, uncertainty: 0 });
    expect(clearance(exact(68), exact(67.99)).value).toBe(0.01);
    expect(clearance(exact(68.03), exact(67.971)).value).toBe(0.059);
  });
});
