import { describe, expect, it } from 'vitest';
import { COPPER_COEFFICIENT, resistanceAt20 } from '../../shared/trade/index.ts';

/** Source: IEC 60028. */
describe('copper windings', () => {
  it('E1: 0.1 Ω at 20 °C reads 0.11179 Ω at 50 °C (cabledatasheet.com, read, computed)', () => {
    expect(resistanceAt20({ resistance: 0.11179, temperature: 50 })).toBeCloseTo(0.1, 12);
  });

  it('E2: 1/254.5 is 0.00393 (electrical-engineering-portal.com, read, computed)', () => {
    expect((1 / 254.5).toFixed(5)).toBe(String(COPPER_COEFFICIENT));
  });

  it('E3: 0.100 Ω cold and 0.120 Ω hot is a rise of 50.9 °C (computed)', () => {
    expect(resistanceAt20({ resistance: 0.12, temperature: 20 + 50.9 })).toBeCloseTo(0.1, 4);
  });
});
