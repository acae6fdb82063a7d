import { describe, expect, it } from 'vitest';
import { MACHINE_KINDS } from '../vocabulary.ts';
import { runDemands, unsafeToPass } from './run-safety.ts';
import { judgeSpeeds } from './run-speed.ts';
import type { TestRunFindings } from './test-run.ts';

const GOOD: TestRunFindings = {
  idleSpeed: 1750,
  topSpeed: 3600,
  compression: [],
  leakDown: [],
  stopSwitch: 'works',
  interlocks: 'works',
  governor: 'works',
  fuelTight: 'works',
  chainBrake: 'works',
  bladeStop: 2.2,
  notFittedWhy: '',
  outputVolts: null,
  outputAmps: null,
  leaks: '',
  note: '',
  tachometer: null,
};
const BANDS = [
  { feature: 'idle-speed', specificationId: 'i', low: 1700, high: 1900 },
  { feature: 'top-speed', specificationId: 't', low: 3500, high: 3700 },
] as const;

const against = (
  findings: Partial<TestRunFindings>,
  {
    machine = 'mower',
    cycle = 'four-stroke',
    known = ['idle-speed', 'top-speed'],
  }: Partial<On> = {},
) => {
  const all = { ...GOOD, ...findings };
  const speeds = judgeSpeeds(all, known.length > 0 ? BANDS : [], null);
  return unsafeToPass(all, { machine, cycle, known, speeds }).map((each) =>
    each.replaceAll('\u00a0', ' '),
  );
};
type On = Omit<Parameters<typeof unsafeToPass>[1], 'speeds'>;

describe('what stands against passing', () => {
  it('is nothing of a machine on which all of it works', () => {
    for (const machine of MACHINE_KINDS) expect(against({}, { machine })).toEqual([]);
  });

  it.each(['stopSwitch', 'interlocks', 'governor', 'fuelTight'] as const)(
    'is %s that failed, or that nobody tried',
    (check) => {
      expect(against({ [check]: 'fails' })).toHaveLength(1);
      expect(against({ [check]: 'not-tried' })).toHaveLength(1);
    },
  );

  it('is a stop switch that is gone from a machine that must have one, whatever the reason', () => {
    expect(
      against({ stopSwitch: 'not-fitted', notFittedWhy: 'Lost' }, { machine: 'tiller' }),
    ).toEqual(['Stop switch: not fitted, and a tiller must have it']);
    expect(against({ stopSwitch: 'not-fitted' }, { machine: 'kart' })).toEqual([
      'Stop switch: not fitted: say why',
    ]);
    expect(
      against(
        { stopSwitch: 'not-fitted', notFittedWhy: 'Stopped by its fuel tap' },
        { machine: 'kart' },
      ),
    ).toEqual([]);
  });

  it('is no interlock of a pump, and no governor of a saw', () => {
    expect(against({ interlocks: 'not-fitted' }, { machine: 'pump' })).toEqual([]);
    expect(
      against({ governor: 'not-fitted' }, { machine: 'chainsaw', cycle: 'two-stroke', known: [] }),
    ).toEqual([]);
    // Where there is one, it works.
    expect(against({ interlocks: 'fails' }, { machine: 'pump' })).toEqual([
      'Safety interlocks: failed',
    ]);
  });

  it('is the chain brake of a saw', () => {
    for (const chainBrake of ['fails', 'not-tried', 'not-fitted', null] as const)
      expect(against({ chainBrake }, { machine: 'chainsaw', known: [] })).toHaveLength(1);
  });

  // 16 CFR 1205.5(a)(1)(iii): 3.0 s, read; riding mowers 5 s, ANSI/OPEI B71.1, from memory.
  it.each([
    ['mower', 3, 0],
    ['mower', 3.1, 1],
    ['riding-mower', 5, 0],
    ['riding-mower', 5.1, 1],
    ['mower', null, 1],
    ['tiller', null, 0],
  ] as const)('of a %s with a blade that stands after %s s are %d', (machine, bladeStop, count) => {
    expect(against({ bladeStop }, { machine })).toHaveLength(count);
  });

  it.each([
    { leaks: 'Fuel onto the muffler' },
    { leaks: 'a drop of petrol at the tap' },
    { note: 'Runs well; fuel drips onto the muffler' },
  ])('is fuel that was written down beside a system said to be dry: %o', (words) => {
    expect(against(words)[0]).toMatch(/^Fuel system: “.*(fuel|petrol)/i);
  });

  it.each([
    { leaks: 'Oil at the breather' },
    { leaks: 'No fuel leak, some oil' },
    { note: 'Filled with fresh fuel, muffler renewed' },
  ])('is none of %o', (words) => {
    expect(against(words)).toEqual([]);
  });

  it('is a speed that the book has and nobody measured, or that is outside', () => {
    expect(against({ topSpeed: null })).toEqual([
      'Top speed, no load: not measured, and the spec book has it',
    ]);
    expect(against({ topSpeed: null, idleSpeed: null }, { known: [] })).toEqual([]);
    expect(against({ topSpeed: 3800, idleSpeed: 1500 })).toEqual([
      'Idle speed: 1500 rpm is outside 1700 to 1900 rpm',
      'Top speed, no load: 3800 rpm is outside 3500 to 3700 rpm',
    ]);
  });
});

it('asks each machine that cuts grass how long its blade runs on, and no other', () => {
  const bladed = MACHINE_KINDS.filter((kind) => runDemands(kind, 'four-stroke').bladeStop !== null);
  expect(bladed).toEqual(['mower', 'riding-mower']);
});
