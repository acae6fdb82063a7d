import { describe, expect, it } from 'vitest';
import { defaultBuild } from './default-build.ts';
import { type DatedEvent, undoingOf } from './undone-steps.ts';

const FOUR = { cycle: 'four-stroke', cylinders: 2, valves: 'overhead' } as const;
const SIDE = { ...FOUR, cylinders: 1, valves: 'side' } as const;
const TWO = { cycle: 'two-stroke', cylinders: 1, valves: null } as const;
const steps = defaultBuild(FOUR);
const stepOf = (key: string) => {
  const step = steps.find((each) => each.key === key);
  if (step === undefined) throw new Error(`No step ${key}.`);
  return step;
};
const passed = (key: string, at: string): DatedEvent => ({ key, outcome: 'passed', at });
const undone = (key: string, events: DatedEvent[], pulls: { at: string }[] = []) =>
  undoingOf(
    stepOf(key),
    steps,
    events,
    pulls.map(({ at }) => ({ feature: 'head-bolt-torque', stage: 1, at })),
  );

describe('a step that a later one undoes', () => {
  it('was turned by hand before the head bolts were tightened', () => {
    const events = [passed('turned-by-hand', '10:00'), passed('head-bolts', '10:05')];
    expect(undone('turned-by-hand', events)).toEqual({
      by: stepOf('head-bolts').label,
      at: '10:05',
    });
  });

  it('stands when it was done after it', () => {
    const events = [passed('head-bolts', '10:00'), passed('turned-by-hand', '10:05')];
    expect(undone('turned-by-hand', events)).toBeNull();
  });

  it('is undone by bolts that are pulled again, not by those from before', () => {
    const events = [passed('head-bolts', '10:00'), passed('valve-lash', '10:05')];
    expect(undone('valve-lash', events, [{ at: '09:59' }])).toBeNull();
    expect(undone('valve-lash', events, [{ at: '10:07' }])).toMatchObject({ at: '10:07' });
  });

  it('stands again once it is passed again', () => {
    const events = [
      passed('turned-by-hand', '10:00'),
      passed('head-bolts', '10:05'),
      passed('turned-by-hand', '10:10'),
    ];
    expect(undone('turned-by-hand', events)).toBeNull();
  });

  it('is not undone when it was overridden, or while it is open', () => {
    const override: DatedEvent = { key: 'turned-by-hand', outcome: 'overridden', at: '10:00' };
    expect(undone('turned-by-hand', [override, passed('head-bolts', '10:05')])).toBeNull();
    expect(undone('turned-by-hand', [passed('head-bolts', '10:05')])).toBeNull();
  });

  it('is never undone by a step that comes before it in its own sheet’s order', () => {
    for (const engine of [FOUR, SIDE, TWO]) {
      const inOrder = defaultBuild(engine);
      const events = inOrder.map(({ key }, index) => passed(key, String(index).padStart(2, '0')));
      for (const step of inOrder) expect(undoingOf(step, inOrder, events, [])).toBeNull();
    }
  });
});
