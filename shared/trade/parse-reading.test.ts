import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { display, displayNumber } from './display.ts';
import { parseReading } from './parse-reading.ts';
import { dimensionOf, UNITS, type Unit } from './units.ts';

describe('parseReading', () => {
  it.each<[text: string, given: Unit, value: number, unit: Unit]>([
    ['0.15', 'mm', 0.15, 'mm'],
    ['0,15', 'mm', 0.15, 'mm'],
    ['1,234', 'mm', 1.234, 'mm'],
    ['0,125', 'kPa', 0.125, 'kPa'],
    ['12,5', 'psi', 12.5, 'psi'],
    ['.15', 'in', 0.15, 'in'],
    ['.006"', 'mm', 0.006, 'in'],
    ['.006”', 'mm', 0.006, 'in'],
    ['.006″', 'mm', 0.006, 'in'],
    ["0.006''", 'mm', 0.006, 'in'],
    ['0.006 in.', 'mm', 0.006, 'in'],
    ['6 thou', 'mm', 6, 'thou'],
    ['6thou', 'mm', 6, 'thou'],
    ['17 lbf·ft', 'N·m', 17, 'lbf·ft'],
    ['17 ft-lb', 'N·m', 17, 'lbf·ft'],
    ['17 ft lbs', 'N·m', 17, 'lbf·ft'],
    ['17 ft.lbs.', 'N·m', 17, 'lbf·ft'],
    ['17 lb-ft', 'N·m', 17, 'lbf·ft'],
    ['17 ft/lbs', 'N·m', 17, 'lbf·ft'],
    ['17 foot-pounds', 'N·m', 17, 'lbf·ft'],
    ['17 foot lbs', 'N·m', 17, 'lbf·ft'],
    ['17 ft pounds', 'N·m', 17, 'lbf·ft'],
    ['17 foot-pounds force', 'N·m', 17, 'lbf·ft'],
    ['200 in-lb', 'N·m', 200, 'lbf·in'],
    ['200 inch lbs', 'N·m', 200, 'lbf·in'],
    ['200 lb-in', 'N·m', 200, 'lbf·in'],
    ['200 inch pounds', 'lbf·ft', 200, 'lbf·in'],
    ['200in-lbs', 'N·m', 200, 'lbf·in'],
    ['12 Nm', 'lbf·ft', 12, 'N·m'],
    ['12 N·m', 'lbf·ft', 12, 'N·m'],
    ['12 N-m', 'lbf·ft', 12, 'N·m'],
    ['2.4 kg-m', 'N·m', 2.4, 'kgf·m'],
    ['240 kgf cm', 'N·m', 240, 'kgf·cm'],
    ['1-3/8 in', 'mm', 1.375, 'in'],
    ['1 3/8"', 'mm', 1.375, 'in'],
    ['1-3/8-in', 'mm', 1.375, 'in'],
    ['3/8 in', 'mm', 0.375, 'in'],
    ['3/8', 'in', 0.375, 'in'],
    ['1⅜ in', 'mm', 1.375, 'in'],
    ['⅜"', 'mm', 0.375, 'in'],
    ['1½ in', 'mm', 1.5, 'in'],
    ['5⁄64 in', 'mm', 0.078125, 'in'],
    ['68.02mm', 'in', 68.02, 'mm'],
    ['68.02 MM', 'in', 68.02, 'mm'],
    ['0.3 mm', 'thou', 0.3, 'mm'],
    ['-0.02', 'mm', -0.02, 'mm'],
    ['−0.02', 'mm', -0.02, 'mm'],
    ['– 0,02 mm', 'mm', -0.02, 'mm'],
    ['+0.02', 'mm', 0.02, 'mm'],
    ['-1-3/8', 'in', -1.375, 'in'],
    ['６８．０２', 'mm', 68.02, 'mm'],
    ['０，１５ｍｍ', 'in', 0.15, 'mm'],
    ['ー０．０２', 'mm', -0.02, 'mm'],
    ['٦٨٫٠٢', 'mm', 68.02, 'mm'],
    ['۰٫۱۵ mm', 'in', 0.15, 'mm'],
    ['٣٫٦٠٠', 'rpm', 3.6, 'rpm'],
    ['\u2067\u061C0.15\u2069 mm', 'in', 0.15, 'mm'],
    ['0。15', 'mm', 0.15, 'mm'],
    ['68.02\u00A0mm', 'in', 68.02, 'mm'],
    ['\u200E68.02\u202Fmm ', 'in', 68.02, 'mm'],
    ['0.15 ㎜', 'in', 0.15, 'mm'],
    ['12 µm', 'mm', 12, 'um'],
    ['12 μm', 'mm', 12, 'um'],
    ['12 um', 'mm', 12, 'um'],
    ['12 microns', 'mm', 12, 'um'],
    ['25 °C', '°F', 25, '°C'],
    ['25 ℃', '°F', 25, '°C'],
    ['25ºC', '°F', 25, '°C'],
    ['77F', '°C', 77, '°F'],
    ['77 deg F', '°C', 77, '°F'],
    ['25°', '°C', 25, '°C'],
    ['77°', '°F', 77, '°F'],
    ['-40', '°F', -40, '°F'],
    ['300 K', '°C', 300, 'K'],
    ['2,5 kΩ', 'Ω', 2.5, 'kΩ'],
    ['2.5 kohm', 'Ω', 2.5, 'kΩ'],
    ['2.5k', 'Ω', 2.5, 'kΩ'],
    ['2.5K', 'kΩ', 2.5, 'kΩ'],
    ['2.5 ㏀', 'Ω', 2.5, 'kΩ'],
    ['0.8 \u2126', 'kΩ', 0.8, 'Ω'],
    ['0.125', 'Ω', 0.125, 'Ω'],
    ['90 psi', 'kPa', 90, 'psi'],
    ['6,2 bar', 'kPa', 6.2, 'bar'],
    ['29.92 in Hg', 'kPa', 29.92, 'inHg'],
    ['29.92 "Hg', 'kPa', 29.92, 'inHg'],
    ['12.5 cu. in.', 'cm3', 12.5, 'in3'],
    ['12.5 in³', 'cm3', 12.5, 'in3'],
    ['196 cc', 'in3', 196, 'cm3'],
    ['196 cm^3', 'in3', 196, 'cm3'],
    ['2.6 oz', 'ml', 2.6, 'fl-oz-us'],
    ['2.6 fl. oz.', 'ml', 2.6, 'fl-oz-us'],
    ['1 gal', 'L', 1, 'gal-us'],
    ['5.5 HP', 'kW', 5.5, 'hp'],
    ['12 lbs', 'N', 12, 'lbf'],
    ['3600 rpm', 'rpm', 3600, 'rpm'],
    ['3600 1/min', 'rpm', 3600, '1/min'],
    ['3600 min-1', '1/min', 3600, '1/min'],
    ['22.5 %', '%', 22.5, '%'],
    ['0', 'mm', 0, 'mm'],
    ['-0', 'mm', 0, 'mm'],
    ['007', 'mm', 7, 'mm'],
  ])('reads %s, expected in %s', (text, given, value, unit) => {
    expect(parseReading(text, given)).toStrictEqual({ value, unit, text });
  });

  it.each<[text: string, given: Unit, sentence: RegExp]>([
    ['', 'mm', /Nothing is typed/],
    ['   ', 'mm', /Nothing is typed/],
    ['mm', 'mm', /begin with a number/],
    ['about 0.3', 'mm', /begin with a number/],
    ['~0.3', 'mm', /begin with a number/],
    ['<0.3', 'mm', /begin with a number/],
    ['±0.02', 'mm', /begin with a number/],
    ['.', 'mm', /begin with a number/],
    ['-', 'mm', /begin with a number/],
    ['--0.2', 'mm', /begin with a number/],
    ['NaN', 'mm', /begin with a number/],
    ['Infinity', 'mm', /begin with a number/],
    ['1.234,5', 'mm', /more than one way/],
    ['1,234.5', 'mm', /more than one way/],
    ['1 234.5', 'mm', /more than one way/],
    ["1'234", 'mm', /more than one way/],
    ['0.15.2', 'mm', /more than one way/],
    ['1/2/3', 'in', /more than one way/],
    ['1.5/8', 'in', /more than one way/],
    ['0.2 0.3', 'mm', /more than one way/],
    ['3,600', 'rpm', /thousands or decimals/],
    ['3,600 rpm', 'rpm', /thousands or decimals/],
    ['3,600', '1/min', /thousands or decimals/],
    ['3 600 1/min', '1/min', /more than one way/],
    ['2,500 Ω', 'kΩ', /thousands or decimals/],
    ['1,234 cc', 'cm3', /thousands or decimals/],
    ['2,677 thou', 'mm', /thousands or decimals/],
    ['1,500', 'psi', /thousands or decimals/],
    ['0.2-0.4', 'mm', /range or a sum/],
    ['0.2 – 0.4 mm', 'mm', /range or a sum/],
    ['1/0', 'in', /divides by zero/],
    ['1-8/8', 'in', /less than one/],
    ['1e3', 'mm', /not a unit/],
    ['0x10', 'mm', /not a unit/],
    ['5²', 'mm', /not a unit/],
    ['5.', 'mm', /not a unit/],
    ['5-', 'mm', /not a unit/],
    ["5'", 'mm', /not a unit/],
    ['0.3 mm?', 'mm', /not a unit/],
    ['12 MΩ', 'Ω', /not a unit/],
    ['6.8 cm', 'mm', /not a unit/],
    ['6 mil', 'mm', /write thou or mm/],
    ['6 mils', 'mm', /write thou or mm/],
    ['5 lb/ft', 'N·m', /not a unit/],
    ['1 N/m', 'N·m', /not a unit/],
    ['٣٬٦٠٠', 'rpm', /not a unit|more than one way/],
    ['12 psi', 'mm', /psi, which measures pressure; here length is wanted/],
    ['17 lbs', 'N·m', /lbf, which measures force; here torque is wanted/],
    ['5 mm', 'N·m', /measures length/],
    ['25°', 'mm', /measures angle/],
    ['-300 °C', '°F', /colder/],
    ['9'.repeat(61), 'mm', /at most 60 characters/],
  ])('refuses %s, expected in %s', (text, given, sentence) => {
    expect(() => parseReading(text, given)).toThrow(RangeError);
    expect(() => parseReading(text, given)).toThrow(sentence);
  });

  it('reads every number with every unit, with point or comma, as it stands', () => {
    const decimal = fc
      .tuple(fc.integer({ min: -999, max: 99_999 }), fc.integer({ min: 0, max: 99 }))
      .map(([whole, rest]) => `${whole}.${String(rest).padStart(2, '0')}`)
      .filter((text) => !text.startsWith('-'));
    fc.assert(
      fc.property(decimal, fc.constantFrom(...UNITS), fc.boolean(), (number, unit, comma) => {
        const text = `${comma ? number.replace('.', ',') : number} ${unit}`;
        expect(parseReading(text, unit)).toStrictEqual({ value: Number(number), unit, text });
      }),
    );
  });

  it('reads back what is shown of any value', () => {
    const value = fc.double({ min: -200, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(value, fc.constantFrom(...UNITS), (base, unit) => {
        fc.pre(base >= 0 || dimensionOf(unit) !== 'temperature');
        const shown = display(base, unit);
        const read = parseReading(shown, unit);
        expect(read.unit).toBe(unit);
        expect(String(read.value)).toBe(String(Number(displayNumber(base, unit))));
      }),
    );
  });

  it('lets the typed unit win in its own dimension and nowhere else', () => {
    fc.assert(
      fc.property(fc.constantFrom(...UNITS), fc.constantFrom(...UNITS), (typed, given) => {
        const text = `1 ${typed}`;
        if (dimensionOf(typed) === dimensionOf(given)) {
          expect(parseReading(text, given).unit).toBe(typed);
        } else if (typed === '°' && dimensionOf(given) === 'temperature') {
          expect(parseReading(text, given).unit).toBe(given);
        } else if (typed === 'K' && dimensionOf(given) === 'resistance') {
          expect(parseReading(text, given).unit).toBe('kΩ');
        } else {
          expect(() => parseReading(text, given)).toThrow(RangeError);
        }
      }),
    );
  });

  it('answers any text with a reading or a RangeError, never with another failure', () => {
    const anything = fc.oneof(
      fc.string({ maxLength: 80, unit: 'binary' }),
      fc.string({ maxLength: 12, unit: fc.constantFrom(...'0123456789.,-/ "\'mintho·½⅜°') }),
    );
    fc.assert(
      fc.property(anything, fc.constantFrom(...UNITS), (text, unit) => {
        try {
          const reading = parseReading(text, unit);
          expect(Number.isFinite(reading.value)).toBe(true);
          expect(reading.text).toBe(text);
        } catch (error) {
          expect(error).toBeInstanceOf(RangeError);
        }
      }),
      { numRuns: 500 },
    );
  });
});
