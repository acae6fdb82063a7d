import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canMove, JOB_STATES, nextStates, waitsOn } from './job-state.ts';

describe('the way of a job', () => {
  test('every state but handed over can be left, and every state is reached from the first', () => {
    for (const state of JOB_STATES)
      expect(nextStates(state).length > 0).toBe(state !== 'handed-over');
    const reached = new Set(['taken-in']);
    for (let round = 0; round < JOB_STATES.length; round += 1)
      for (const state of JOB_STATES)
        if (reached.has(state)) for (const next of nextStates(state)) reached.add(next);
    expect([...reached].sort()).toEqual([...JOB_STATES].sort());
  });

  test('nothing is handed over but what is ready or was stopped', () => {
    expect(JOB_STATES.filter((state) => canMove(state, 'handed-over'))).toEqual([
      'ready',
      'stopped',
    ]);
  });

  test('nobody waits on a job that was handed over, and somebody on every other', () => {
    fc.assert(
      fc.property(fc.constantFrom(...JOB_STATES), (state) => {
        expect(waitsOn(state) === 'nobody').toBe(state === 'handed-over');
        expect(canMove(state, state)).toBe(false);
      }),
    );
  });
});
