import { describe, expect, test } from 'vitest';
import { quantityOf, repeatedKeys, wiresThatDiffer } from './build-steps.ts';
import { belongsTo, defaultBuild, EVERY_BUILD } from './default-build.ts';

describe('the usual build', () => {
  test('has each key once, over both cycles', () => {
    expect(repeatedKeys(EVERY_BUILD)).toEqual([]);
    expect(repeatedKeys([{ key: 'a' }, { key: 'b' }, { key: 'a' }, { key: 'a' }])).toEqual(['a']);
  });

  test('a step of our own belongs to every engine, one of ours to its cycle', () => {
    expect(belongsTo({ key: 'shop-own' }, 'two-stroke')).toBe(true);
    expect(belongsTo({ key: 'oil' }, 'two-stroke')).toBe(false);
    expect(defaultBuild('two-stroke').some(({ key }) => key === 'fuel-mix')).toBe(true);
  });

  test('what a kind asks for is there: features to measure and tighten, a unit to fill, a way to lie', () => {
    for (const step of EVERY_BUILD) {
      if (step.kind === 'measure' || step.kind === 'torque') expect(step.needs).not.toEqual([]);
      if (step.kind === 'quantity') expect(step.unit).not.toBe('');
      if (step.kind === 'orientation') expect(step.note).not.toBe('');
    }
  });
});

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
