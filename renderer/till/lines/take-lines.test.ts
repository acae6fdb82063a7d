import { expect, test } from 'vitest';
import { LineInput } from '../../../shared/contract/till/index.ts';
import { emptyLine, type MoneyRules, readLine } from './draft-line.ts';
import { takeLines } from './take-lines.ts';

const RULES: MoneyRules = {
  currency: 'USD',
  locale: 'en-US',
  rounding: 'half-up',
  labourRate: 8400,
  labourRates: [],
  labourCost: null,
  outsideMarkupPpm: 0,
  supplies: null,
};

const clocked = (quantity: number, workKind = '') =>
  LineInput.parse({
    kind: 'labour',
    description: workKind === '' ? 'Labour' : workKind,
    quantity,
    unit: 'h',
    unitPrice: 8400,
    unitCost: 3000,
    priceFrom: 'clocked-time',
    workKind,
  });

test('clocked time comes below what is typed, and again in the place where it stands', () => {
  const typed = { ...emptyLine([], 'fee', RULES), description: 'Diagnosis', unitPrice: '40' };
  const first = takeLines([typed], [clocked(1500), clocked(250, 'Machining')], RULES);
  expect(first.map(({ description, quantity }) => [description, quantity])).toEqual([
    ['Diagnosis', '1'],
    ['Labour', '1.5'],
    ['Machining', '0.25'],
  ]);
  const renamed = first.map((line) =>
    line.description === 'Labour' ? { ...line, description: 'Rebuild' } : line,
  );
  const again = takeLines(renamed, [clocked(2000)], RULES);
  expect(again.map(({ description, quantity }) => [description, quantity])).toEqual([
    ['Diagnosis', '1'],
    ['Rebuild', '2'],
    ['Machining', '0.25'],
  ]);
  expect(new Set(again.map(({ key }) => key)).size).toBe(3);
});

test('it can take the place of the labour by the hour; flat labour stays', () => {
  const hourly = { ...emptyLine([], 'labour', RULES), description: 'Rebuild', quantity: '4' };
  const flat = { ...hourly, key: 2, description: 'Valve job', unit: 'pc' };
  const lines = takeLines([hourly, flat], [clocked(1500)], RULES, 'hourly-labour');
  expect(lines.map(({ description }) => description)).toEqual(['Valve job', 'Labour']);
});

test('the empty line that a new bill begins with makes way, and what is taken can be sent as it is', () => {
  const [line, ...none] = takeLines([emptyLine([], 'labour', RULES)], [clocked(333)], RULES);
  expect(none).toEqual([]);
  expect(line && readLine(line, RULES).line).toEqual(clocked(333));
});
