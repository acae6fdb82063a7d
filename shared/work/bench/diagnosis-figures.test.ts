import { describe, expect, test } from 'vitest';
import { readFigures, type TypedFigure } from './diagnosis-figures.ts';

const pressure = (text: string, cylinder = 1): TypedFigure => ({
  cylinder,
  text,
  unit: 'psi',
  path: null,
});
const leak = (text: string, path: TypedFigure['path'] = 'exhaust'): TypedFigure => ({
  cylinder: 1,
  text,
  unit: '%',
  path,
});

describe('what a gauge showed', () => {
  test('is kept as typed, beside its value in kPa', () => {
    const { figures, faults } = readFigures('compression', [pressure(' 85 ')], 1);
    expect(faults).toEqual({});
    // 1 psi = 6.894757 kPa: NIST SP 811, appendix B.8.
    expect(figures).toEqual([
      { cylinder: 1, text: '85', unit: 'psi', base: expect.closeTo(586.054, 3), path: null },
    ]);
  });

  test('the unit in the text comes before the one beside the field', () => {
    expect(readFigures('compression', [pressure('6 bar')], 1).figures[0]).toMatchObject({
      unit: 'bar',
      base: 600,
    });
  });

  test('an empty field was not measured', () => {
    expect(readFigures('compression', [pressure('90'), pressure(' ', 2)], 2)).toMatchObject({
      figures: [{ cylinder: 1 }],
      faults: {},
    });
  });

  test('a leak says where the air leaves', () => {
    expect(readFigures('leak-down', [leak('38')], 1).figures[0]).toMatchObject({
      base: 38,
      path: 'exhaust',
    });
    expect(readFigures('leak-down', [leak('8', null)], 1).figures[0]?.path).toBe('none');
  });

  test.each([
    ['compression', pressure('plenty'), /./],
    ['compression', pressure('12 mm'), /pressure/],
    ['compression', pressure('-3'), /zero or more/],
    ['compression', pressure('900'), /more than any engine/],
    ['compression', pressure('90', 2), /one cylinder/],
    ['leak-down', leak('101'), /0 to 100/],
    ['leak-down', leak('20 psi'), /share is wanted/],
    ['leak-down', pressure('20'), /per cent/],
    ['spark', pressure('90'), /no figure/],
  ] as const)('%s: %o is refused', (check, figure, why) => {
    const { figures, faults } = readFigures(check, [figure], 1);
    expect(figures).toEqual([]);
    expect(faults[0]).toMatch(why);
  });

  test('a cylinder has one figure', () => {
    expect(readFigures('compression', [pressure('90'), pressure('95')], 2).faults[1]).toMatch(
      /one figure/,
    );
  });
});
