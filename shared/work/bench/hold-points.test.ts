import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MeasuredFeature } from '../features.ts';
import { type BuiltEngine, defaultBuild } from './default-build.ts';
import {
  doneBefore,
  type HoldPointEvent,
  holdPointState,
  missingReadings,
  missingWords,
} from './hold-points.ts';

const FOUR: BuiltEngine = { cycle: 'four-stroke', cylinders: 1, valves: 'overhead' };
const TWO: BuiltEngine = { cycle: 'two-stroke', cylinders: 1, valves: null };
const holdPointsOf = (engine: BuiltEngine) => defaultBuild(engine).filter(({ hold }) => hold);

describe('hold points', () => {
  test('a two-stroke has no valves to set and no sump to fill, and mixes its fuel', () => {
    const keys = holdPointsOf(TWO).map(({ key }) => key);
    expect(keys).not.toEqual(expect.arrayContaining(['valve-lash']));
    expect(keys).not.toContain('oil');
    expect(keys).toContain('fuel-mix');
    expect(holdPointsOf(FOUR).map(({ key }) => key)).not.toContain('fuel-mix');
  });

  test('the test run comes last and no key stands twice', () => {
    for (const engine of [FOUR, TWO]) {
      const keys = holdPointsOf(engine).map(({ key }) => key);
      expect(keys.at(-1)).toBe('test-run');
      expect(new Set(keys).size).toBe(keys.length);
    }
  });

  test('the last event decides, whatever came before', () => {
    const outcome = fc.constantFrom('passed', 'overridden', 'reopened');
    fc.assert(
      fc.property(fc.array(outcome, { minLength: 1 }), (outcomes) => {
        const events = outcomes.map((each) => ({ key: 'oil', outcome: each }) as HoldPointEvent);
        const last = outcomes.at(-1);
        expect(holdPointState('oil', events)).toBe(last === 'reopened' ? 'open' : last);
      }),
    );
  });

  test('a step that is not held is no hold point', () => {
    const loose = defaultBuild(FOUR).filter(({ hold }) => !hold);
    expect(loose.map(({ key }) => key)).toContain('as-built');
    for (const { key } of loose)
      expect(holdPointsOf(FOUR).map((point) => point.key)).not.toContain(key);
  });

  test('a step done out of order says before what it was done, also when that is done later', () => {
    const steps = [{ key: 'a' }, { key: 'b' }, { key: 'c' }];
    const passed = (key: string): HoldPointEvent => ({ key, outcome: 'passed' });
    const early = [passed('a'), passed('c'), passed('b')];
    expect(doneBefore(steps, 'c', early)).toEqual([{ key: 'b' }]);
    expect(doneBefore(steps, 'b', early)).toEqual([]);
    const again: HoldPointEvent[] = [...early, { key: 'c', outcome: 'reopened' }];
    expect(doneBefore(steps, 'c', again)).toEqual([]);
    expect(doneBefore(steps, 'c', [...again, passed('c')])).toEqual([]);
  });

  test('a point names the readings that it lacks', () => {
    const lash = holdPointsOf(FOUR).find(({ key }) => key === 'valve-lash');
    if (lash === undefined) throw new Error('There is no such point.');
    const twin = { cycle: 'four-stroke', cylinders: 2, torqueStages: {} } as const;
    const at = (feature: MeasuredFeature, ...places: string[]) =>
      places.map((place) => ({ feature, place }));
    const lacking = (...measured: ReturnType<typeof at>) =>
      missingReadings(lash, twin, measured).map(missingWords);
    expect(lacking()).toEqual(['Valve lash, intake', 'Valve lash, exhaust']);
    // One cylinder's lash says nothing of the other's.
    expect(
      lacking(
        ...at('valve-lash-intake', 'c1-only'),
        ...at('valve-lash-exhaust', 'c1-only', 'c2-only'),
      ),
    ).toEqual(['Valve lash, intake: cylinder 2']);

    const gap = { needs: ['coil-air-gap'] as const };
    expect(missingReadings(gap, twin, at('coil-air-gap', 'c1-leg-1')).map(missingWords)).toEqual([
      'Coil air gap: leg 2',
    ]);
    // Of bolts the final torque is asked for, not the stages on the way.
    const bolts = { needs: ['head-bolt-torque'] as const };
    const single = { ...twin, cylinders: 1, torqueStages: { 'head-bolt-torque': [0.5, 1] } };
    expect(missingReadings(bolts, single, at('head-bolt-torque', 'c1-stage-1'))).toHaveLength(1);
    expect(missingReadings(bolts, single, at('head-bolt-torque', 'c1-stage-2'))).toEqual([]);
  });
});
