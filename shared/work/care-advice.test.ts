import { describe, expect, test } from 'vitest';
import { type CareFacts, careAdvice, wantsRunningIn, whyNotToRun } from './care-advice.ts';

const SERVICED: CareFacts = {
  cycle: 'four-stroke',
  fuelRatio: null,
  renewed: false,
  headOpened: false,
  oilFilled: true,
};
const advised = (facts: Partial<CareFacts>) => careAdvice({ ...SERVICED, ...facts }).join('\n');

describe('what a customer is told', () => {
  test('is to run in what has new rings, and nothing else', () => {
    expect(advised({ renewed: true })).toContain('after the first five hours');
    for (const facts of [{}, { oilFilled: false }, { headOpened: true }])
      expect(advised(facts)).not.toMatch(/first five hours|no full load/);
    expect(advised({})).toContain('50 hours');
    expect(advised({ headOpened: true })).toContain('head bolts');
  });

  test('is to mix the fuel of a two-stroke, and never to change its oil', () => {
    for (const renewed of [true, false]) {
      const words = advised({ cycle: 'two-stroke', fuelRatio: 40, renewed });
      expect(words).toContain('40:1');
      expect(words).not.toMatch(/change the oil|check the oil/i);
    }
    expect(advised({ cycle: 'two-stroke' })).toContain('its maker names');
  });
});

test('an engine is run in by what was decided on its inside, and without that by the kind of work', () => {
  const rebuild = { work: 'rebuild', seems: null } as const;
  expect(wantsRunningIn([], rebuild)).toBe(true);
  expect(wantsRunningIn([{ subject: 'rings', choice: 'reuse' }], rebuild)).toBe(false);
  expect(
    wantsRunningIn([{ subject: 'rings', choice: 'replace' }], { ...rebuild, work: 'repair' }),
  ).toBe(true);
  expect(
    wantsRunningIn([{ subject: 'coil', choice: 'replace' }], { work: 'repair', seems: null }),
  ).toBe(false);
  // Nobody said, and nobody measured: a recoil spring is not run in.
  expect(wantsRunningIn([], { work: null, seems: null })).toBe(false);
  expect(wantsRunningIn([], { work: null, seems: 'rebuild' })).toBe(true);
});

test('a machine is not to be run when somebody said so, or when its last run was unsafe', () => {
  expect(whyNotToRun('', null)).toBe('');
  expect(whyNotToRun('Crankcase cracked', { passed: true, against: [] })).toBe('Crankcase cracked');
  expect(
    whyNotToRun('', { passed: false, against: ['Stop switch: failed', 'Governor: failed'] }),
  ).toBe('Stop switch: failed; Governor: failed');
  expect(whyNotToRun('', { passed: false, against: [] })).toBe('');
  expect(whyNotToRun('', { passed: true, against: [] })).toBe('');
});
