import { describe, expect, it } from 'vitest';
import { testRunFacts } from './test-run-words.ts';

const FINDINGS = {
  idleSpeed: 1750,
  topSpeed: null,
  compression: [1000, 700],
  leakDown: [{ percent: null, path: 'none' as const }],
  stopSwitch: 'fails' as const,
  interlocks: 'works' as const,
  governor: 'not-fitted' as const,
  fuelTight: 'works' as const,
  chainBrake: null,
  bladeStop: 2.4,
  notFittedWhy: '',
  outputVolts: null,
  outputAmps: null,
  leaks: '',
  note: 'Hunts when cold',
  tachometer: null,
};

describe('a test run in words', () => {
  const facts = new Map(
    testRunFacts(FINDINGS, [], ['Stop switch: failed']).map(([name, words]) => [
      name,
      words.replaceAll('\u00a0', ' '),
    ]),
  );

  it('has what was found, in both units where there are two', () => {
    expect(facts.get('Idle')).toBe('1750 rpm');
    // NIST SP 811: 1 psi = 6.894 757 kPa.
    expect(facts.get('Compression')).toBe(
      'cylinder 1: 1000 kPa (145 psi); cylinder 2: 700 kPa (101.5 psi)',
    );
    expect(facts.get('Held against each other')).toContain('70 % of cylinder 1: uneven');
    expect(facts.get('Fuel system')).toBe('Dry');
    expect(facts.get('Blade stands after')).toBe('2.4 s');
    expect(facts.get('Against passing')).toBe('Stop switch: failed');
  });

  it('leaves out what nobody measured', () => {
    expect([...facts.keys()]).not.toContain('Leak-down');
    expect([...facts.keys()]).not.toContain('Top, no load');
    for (const name of ['Leaks', 'Chain brake', 'Not fitted because'])
      expect([...facts.keys()]).not.toContain(name);
  });
});
