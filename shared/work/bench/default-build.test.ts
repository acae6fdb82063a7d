import { describe, expect, test } from 'vitest';
import { repeatedKeys } from './build-steps.ts';
import {
  type BuiltEngine,
  belongsTo,
  defaultBuild,
  EVERY_BUILD,
  EVERY_STEP,
  stepsForWork,
} from './default-build.ts';
import { withFillings } from './usual-steps/fillings.ts';

const OVERHEAD: BuiltEngine = { cycle: 'four-stroke', cylinders: 1, valves: 'overhead' };
const SIDE: BuiltEngine = { ...OVERHEAD, valves: 'side' };
const TWIN: BuiltEngine = { ...OVERHEAD, cylinders: 2 };
const TWO_STROKE: BuiltEngine = { cycle: 'two-stroke', cylinders: 1, valves: null };
const ALL = [OVERHEAD, SIDE, TWIN, TWO_STROKE, { ...OVERHEAD, valves: null }];

const keysOf = (engine: BuiltEngine) => defaultBuild(engine).map(({ key }) => key);
const has = (engine: BuiltEngine) => new Set(keysOf(engine));

describe('the usual build', () => {
  test('has each key once, over all engines and machines', () => {
    expect(repeatedKeys(EVERY_STEP)).toEqual([]);
    expect(repeatedKeys([{ key: 'a' }, { key: 'b' }, { key: 'a' }, { key: 'a' }])).toEqual(['a']);
  });

  test('a step of our own belongs to every engine, one of ours to its cycle', () => {
    expect(belongsTo({ key: 'shop-own' }, TWO_STROKE)).toBe(true);
    expect(belongsTo({ key: 'oil' }, TWO_STROKE)).toBe(false);
    expect(has(TWO_STROKE)).toContain('fuel-mix');
  });

  test('what a kind asks for is there: features to measure and tighten, a unit to fill, a way to lie', () => {
    for (const step of EVERY_STEP) {
      if (step.kind === 'measure' || step.kind === 'torque') expect(step.needs).not.toEqual([]);
      if (step.kind === 'quantity') expect(step.unit).not.toBe('');
      if (step.kind === 'orientation') expect(step.note).not.toBe('');
    }
  });

  // Each pair: what is done first, and what it would undo or cover if it were done later.
  test.each([
    ['ring-gaps', 'rod-cap'],
    ['rod-cap', 'rod-bolts'],
    ['rod-bolts', 'timing-marks'],
    ['timing-marks', 'crankcase-shut'],
    ['crankcase-shut', 'end-play'],
    ['tappet-clearance', 'head-gasket'],
    ['head-gasket', 'head-bolts'],
    ['head-bolts', 'valve-train'],
    ['valve-train', 'valve-lash'],
    ['valve-lash', 'turned-by-hand'],
    ['head-bolts', 'pressure-test'],
    ['pressure-test', 'flywheel-key'],
    ['flywheel-key', 'flywheel-nut'],
    ['flywheel-nut', 'air-gap'],
    ['air-gap', 'turned-by-hand'],
    ['oil', 'test-run'],
    ['guards', 'test-run'],
  ])('%s comes before %s', (first, later) => {
    const order = EVERY_BUILD.map(({ key }) => key);
    expect(order).toContain(first);
    expect(order.indexOf(first)).toBeLessThan(order.indexOf(later));
  });

  test('staggers the rings of a four-stroke, and leaves those of a two-stroke on their pins', () => {
    expect(has(OVERHEAD)).toContain('ring-gaps');
    expect(has(OVERHEAD)).not.toContain('ring-pins');
    expect(has(TWO_STROKE)).toContain('ring-pins');
    expect(has(TWO_STROKE)).not.toContain('ring-gaps');
    const pinned = defaultBuild(TWO_STROKE).find(({ key }) => key === 'ring-pins');
    expect(pinned?.note).toContain('Never staggered');
  });

  test('sets lash by screw with overhead valves, and grinds the stem of side valves before the head is on', () => {
    expect(has(OVERHEAD)).toContain('valve-lash');
    expect(has(OVERHEAD)).not.toContain('tappet-clearance');
    expect(has(SIDE)).toContain('tappet-clearance');
    expect(has(SIDE)).not.toContain('valve-lash');
    expect(has(SIDE)).not.toContain('valve-train');
    // Where nobody said how the valves stand, the lash is asked for all the same.
    expect(has({ ...OVERHEAD, valves: null })).toContain('valve-lash');
  });

  test('asks a two-stroke’s crankcase to be tight, a four-stroke’s to be filled', () => {
    for (const key of ['pressure-test', 'vacuum-test', 'reeds', 'fuel-mix'])
      expect([has(TWO_STROKE).has(key), has(OVERHEAD).has(key)]).toEqual([true, false]);
    for (const key of ['oil', 'timing-marks', 'rod-bolts', 'breather', 'governor-linkage'])
      expect([has(TWO_STROKE).has(key), has(OVERHEAD).has(key)]).toEqual([false, true]);
  });

  test('asks each cylinder of a twin for its spark', () => {
    expect(has(TWIN)).toContain('both-fire');
    expect(has(OVERHEAD)).not.toContain('both-fire');
  });
});

describe('the steps of a job', () => {
  const stepsOf = (more: Partial<Parameters<typeof stepsForWork>[1]>) =>
    stepsForWork(defaultBuild(OVERHEAD), {
      engine: OVERHEAD,
      machine: 'mower',
      work: 'repair',
      touched: [],
      ...more,
    }).map(({ key }) => key);

  test('of a recoil spring are few', () => {
    expect(stepsOf({ touched: ['starter'] })).toEqual(['starter', 'guards', 'test-run']);
  });

  test('of a service are what a service does, and the safety of that machine', () => {
    expect(stepsOf({ work: 'service' })).toEqual([
      'valve-lash',
      'fuel-system',
      'air-filter',
      'plug-gap',
      'oil',
      'blade',
      'guards',
      'test-run',
    ]);
    const saw = stepsOf({ work: 'service', machine: 'chainsaw', engine: TWO_STROKE });
    expect(saw).toContain('chain');
    expect(saw).toContain('fuel-mix');
    expect(saw).not.toContain('oil');
  });

  test('of a rebuild are all of its sheet, in its own words', () => {
    const own = [
      { ...EVERY_BUILD[0], key: 'own', label: 'Our own' } as (typeof EVERY_BUILD)[number],
    ];
    const facts = { engine: OVERHEAD, machine: 'mower', touched: [] } as const;
    expect(stepsForWork(own, { ...facts, work: 'rebuild' })).toEqual(own);
    const words = [
      { ...own[0], key: 'starter', label: 'Rope by our colour' } as (typeof own)[number],
    ];
    expect(stepsForWork(words, { ...facts, work: 'repair', touched: ['starter'] })[0]?.label).toBe(
      'Rope by our colour',
    );
  });

  test('end with the test run, whatever was touched', () => {
    for (const engine of ALL)
      for (const work of ['rebuild', 'repair', 'service'] as const)
        expect(
          stepsForWork(defaultBuild(engine), {
            engine,
            machine: 'pump',
            work,
            touched: ['fuel'],
          }).at(-1)?.key,
        ).toBe('test-run');
  });
});

test('what the engine takes is said at the step that fills it', () => {
  const steps = withFillings(defaultBuild(OVERHEAD), {
    oilAmount: 600,
    oilGrade: 'SAE 30',
    fuelRatio: null,
    plug: 'RT-12',
  });
  const note = (key: string) =>
    steps.find((step) => step.key === key)?.note.replaceAll('\u00a0', ' ');
  expect(note('oil')).toBe('The spec book: SAE 30, 600 ml.');
  expect(note('plug-gap')).toBe('The spec book: RT-12.');
  expect(note('guards')).toBe('');
});
