import { expect, test } from 'vitest';
import type { CheckFigure } from './diagnosis.ts';
import { figureLines, figureRemarks } from './diagnosis-words.ts';

const plain = (lines: string[]) => lines.map((line) => line.replaceAll('\u00a0', ' '));

const psi = (cylinder: number, text: string, base: number): CheckFigure => ({
  cylinder,
  text,
  unit: 'psi',
  base,
  path: null,
});

test('a pressure stands in the unit that it was read in, and in the other', () => {
  expect(plain(figureLines([psi(1, '85', 586.054)]))).toEqual(['85 psi (586 kPa)']);
  expect(plain(figureLines([{ ...psi(1, '586', 586), unit: 'kPa' }]))).toEqual([
    '586 kPa (85 psi)',
  ]);
});

test('several cylinders are named', () => {
  expect(plain(figureLines([psi(1, '110', 758.4), psi(2, '75', 517.1)]))).toEqual([
    'Cylinder 1: 110 psi (758 kPa)',
    'Cylinder 2: 75 psi (517 kPa)',
  ]);
});

test('two cylinders are held against each other', () => {
  const [remark] = figureRemarks('compression', [psi(1, '110', 758.4), psi(2, '75', 517.1)]);
  expect(remark).toMatch(/^Cylinder 2 has 68.1 % of cylinder 1: uneven/);
  expect(figureRemarks('compression', [psi(1, '85', 586)])).toEqual([]);
});

test('a leak says where to look', () => {
  const leak: CheckFigure = { cylinder: 1, text: '38', unit: '%', base: 38, path: 'exhaust' };
  expect(figureLines([leak])).toEqual(['38 %, exhaust: the exhaust valve']);
  expect(figureRemarks('leak-down', [leak])).toEqual([
    'Bad: it wants mending. Air in the exhaust: the exhaust valve does not seat. Check its lash first, then seat and stem.',
  ]);
});
