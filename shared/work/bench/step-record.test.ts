import { describe, expect, it } from 'vitest';
import { durationWords, gaugesOfStep, orderOfSteps } from './step-record.ts';

const event = (key: string, at: string, outcome: 'passed' | 'reopened' = 'passed') => ({
  key,
  outcome,
  at: `2026-11-03T${at}Z`,
});

describe('the order of steps', () => {
  const events = [
    event('b', '10:00:00'),
    event('a', '10:00:04'),
    event('b', '10:01:00', 'reopened'),
    event('b', '10:02:30'),
  ];

  it('is that of the events which they stand by', () => {
    expect([...orderOfSteps(['a', 'b', 'c'], events)]).toEqual([
      ['a', { order: 1, seconds: null }],
      ['b', { order: 2, seconds: 146 }],
    ]);
  });

  it('leaves out what is open', () => {
    expect([...orderOfSteps(['a'], events).keys()]).toEqual(['a']);
  });
});

describe('the gauges of a step', () => {
  const lash = { kind: 'measure', needs: ['valve-lash-intake', 'valve-lash-exhaust'] } as const;
  const step = { ...lash, needs: [...lash.needs] };

  it('are those that its readings name, and it says where one was not named', () => {
    const named = { feature: 'valve-lash-intake', gauge: { name: 'Feeler set' } } as const;
    const other = { feature: 'valve-lash-exhaust', gauge: null } as const;
    expect(gaugesOfStep(step, [named, { ...other, feature: 'plug-gap' }], [])).toEqual({
      gauges: ['Feeler set'],
      gaugeNotNamed: false,
      pulls: null,
    });
    expect(gaugesOfStep(step, [named, other], []).gaugeNotNamed).toBe(true);
  });

  it('are the wrenches of its pulls, with how long the walk took', () => {
    const pull = (stage: number, at: string, wrench: string | null = null) => ({
      feature: 'head-bolt-torque' as const,
      stage,
      at: `2026-11-03T${at}Z`,
      wrench,
    });
    const torque = { kind: 'torque' as const, needs: ['head-bolt-torque' as const] };
    const pulls = [pull(0, '10:00:00'), pull(1, '10:00:01'), pull(1, '10:00:10')];
    expect(gaugesOfStep(torque, [], pulls)).toEqual({
      gauges: [],
      gaugeNotNamed: true,
      pulls: { count: 2, seconds: 9 },
    });
  });
});

it('says how long in the words of a watch', () => {
  expect([9, 59, 60, 245, 3_600, 7_800, 90_000].map(durationWords)).toEqual([
    '9 s',
    '59 s',
    '1 min 00 s',
    '4 min 05 s',
    '1 h 00 min',
    '2 h 10 min',
    '1 d 1 h',
  ]);
});
