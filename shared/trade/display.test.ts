import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { display, displayNumber } from './display.ts';
import { BASE_UNIT_OF, convert, dimensionOf, UNITS } from './units.ts';

describe('display', () => {
  it('turns a base value into a unit with the decimals of the trade', () => {
    expect(display(0.1524, 'in')).toBe('0.006\u00A0in');
    expect(display(0.3, 'mm')).toBe('0.30\u00A0mm');
    expect(display(68.0213, 'mm')).toBe('68.021\u00A0mm');
    expect(display(0.1524, 'thou')).toBe('6\u00A0thou');
    expect(display(0.012, 'um')).toBe('12\u00A0µm');
    expect(display(convert(17, 'lbf·ft', 'N·m'), 'lbf·ft')).toBe('17\u00A0lbf·ft');
    expect(display(convert(17, 'lbf·ft', 'N·m'), 'N·m')).toBe('23\u00A0N·m');
    expect(display(20, '°F')).toBe('68\u00A0°F');
    expect(display(12, '°')).toBe('12°');
    expect(display(196.1, 'cm3')).toBe('196.1\u00A0cm³');
  });

  it('rounds the decimal, not its binary neighbour, and shows no minus before zero', () => {
    expect(displayNumber(1.0005, 'mm')).toBe('1.001');
    expect(displayNumber(-0.0001, 'mm')).toBe('0.00');
    expect(displayNumber(-0.02, 'mm')).toBe('-0.02');
    expect(displayNumber(3600, 'rpm')).toBe('3600');
  });

  it('stays within half a step of the value for every unit', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...UNITS),
        fc.double({ min: 0.01, max: 1e5, noNaN: true }),
        (unit, value) => {
          const text = displayNumber(value, unit);
          const step = 10 ** -(text.split('.')[1]?.length ?? 0);
          const exact = convert(value, BASE_UNIT_OF[dimensionOf(unit)], unit);
          expect(Math.abs(Number(text) - exact)).toBeLessThanOrEqual(step / 2 + 1e-9 * exact);
        },
      ),
    );
  });

  it('refuses what is no number', () => {
    expect(() => display(Number.NaN, 'mm')).toThrow(RangeError);
  });
});
