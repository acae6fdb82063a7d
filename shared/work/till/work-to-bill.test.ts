import { expect, test } from 'vitest';
import { workToBill } from './work-to-bill.ts';

const option = (key: string, label: string, total: number, lines: readonly string[]) => ({
  key,
  label,
  lines,
  totals: { total },
});
const FIRST = {
  id: 'first',
  options: [
    option('a', 'Rebuild', 60_000, ['piston', 'rings', 'recoil']),
    option('b', 'Repair', 20_000, ['gasket']),
  ],
};
const none: { line: number }[] = [];

test('a job without an estimate has nothing to bill', () => {
  expect(workToBill({ estimates: [], approvals: [] })).toBeNull();
});

test('before anybody chose it is the least of the options', () => {
  const work = workToBill({ estimates: [FIRST], approvals: [] });
  expect(work?.option.label).toBe('Repair');
  expect(work?.approval).toBeNull();
});

test('the option that was taken, less what was declined of it', () => {
  const approval = { estimateId: 'first', option: 'a', declined: [{ line: 2 }] };
  const work = workToBill({ estimates: [FIRST], approvals: [approval] });
  expect(work?.lines).toEqual(['piston', 'rings']);
  expect(work?.approval).toBe(approval);
});

test('a newer estimate goes on from the option of the same name, with all of its lines', () => {
  const approval = { estimateId: 'first', option: 'a', declined: [{ line: 2 }] };
  const second = {
    id: 'second',
    options: [
      option('a', 'Repair', 22_000, ['gasket']),
      option('b', 'Rebuild', 70_000, ['piston', 'rings', 'crankshaft']),
    ],
  };
  const work = workToBill({ estimates: [FIRST, second], approvals: [approval] });
  expect(work?.option.key).toBe('b');
  expect(work?.lines).toHaveLength(3);
  expect(work?.approval).toBeNull();
});

test('a newer estimate that names no such option is taken at its least', () => {
  const approval = { estimateId: 'first', option: 'a', declined: none };
  const second = { id: 'second', options: [option('a', '', 65_000, ['piston'])] };
  expect(workToBill({ estimates: [FIRST, second], approvals: [approval] })?.option.key).toBe('a');
});
