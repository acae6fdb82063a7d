import { describe, expect, test } from 'vitest';
import { quantityOf, wiresThatDiffer } from './build-steps.ts';

describe('wiring', () => {
  const diagram = [
    { from: 'red', to: 'red' },
    { from: 'black/white', to: 'green' },
  ];
  test('as in the diagram differs nowhere, however it is written', () => {
    const found = [
      { from: 'Black/White', to: ' Green' },
      { from: 'red', to: 'RED' },
    ];
    expect(wiresThatDiffer(diagram, found)).toEqual([]);
  });
  test('crossed or not looked at, it is named', () => {
    expect(wiresThatDiffer(diagram, [{ from: 'red', to: 'green' }])).toEqual([
      { from: 'red', to: 'red', found: 'green' },
      { from: 'black/white', to: 'green', found: '' },
    ]);
  });
});

describe('a quantity', () => {
  test.each([
    ['1100', 1100],
    ['0,6', 0.6],
    [' .5 ', 0.5],
  ])('%j is %d', (typed, value) => {
    expect(quantityOf(typed)).toBe(value);
  });
  test.each(['', '0', '-1', 'a litre', '1e3', '1.2.3'])('%j is none', (typed) => {
    expect(quantityOf(typed)).toBeNull();
  });
});
