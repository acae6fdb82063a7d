import { describe, expect, test } from 'vitest';
import {
  decidedLimits,
  decidedStep,
  limitsInPhase,
  limitsOfPlace,
  type SizeDecision,
  sizesItCameWith,
  stepInPhase,
} from './decided-limits.ts';

// Invented sizes. That a rebored cylinder is held against the new limits moved by its step is common
// practice; no source.

const BORE = { low: 81, high: 81.02, aim: null, wearLimit: 81.1 };
const decision = (some: Partial<SizeDecision>): SizeDecision => ({
  subject: 'cylinder',
  cylinder: 2,
  choice: 'next-oversize',
  step: 0.25,
  machineTo: { low: 81.25, high: 81.27 },
  ...some,
});

describe('a bore decided oversize', () => {
  test('is held against the limits of a new one, moved by the step', () => {
    expect(decidedLimits('bore', 2, BORE, [decision({})])).toEqual({
      low: 81.25,
      high: 81.27,
      aim: null,
      wearLimit: 81.35,
      step: 0.25,
    });
  });

  test('and of the other cylinder nothing moves', () => {
    expect(decidedLimits('bore', 1, BORE, [decision({})])).toBeNull();
    expect(decidedStep('bore', 1, [decision({})])).toBe(0);
  });

  test('takes the size that the machine shop was given when it is another', () => {
    const fitted = decision({ machineTo: { low: 81.26, high: 81.28 } });
    expect(decidedLimits('bore', 2, { ...BORE, aim: 81.01 }, [fitted])).toMatchObject({
      low: 81.26,
      high: 81.28,
      aim: null,
      wearLimit: 81.35,
    });
  });

  test('was as it was when it came in', () => {
    const place = limitsOfPlace('bore', 2, BORE, { cameWith: [], standing: [decision({})] });
    expect(limitsInPhase(place, 'as-received').low).toBe(81);
    expect(limitsInPhase(place, 'after-machining').low).toBe(81.25);
    expect(limitsInPhase(place, 'final').high).toBe(81.27);
  });
});

test('the piston goes by its own decision', () => {
  const skirt = { low: 80.94, high: 80.96, aim: null, wearLimit: 80.85 };
  const piston = decision({ subject: 'piston', machineTo: null });
  expect(decidedLimits('piston-skirt', 2, skirt, [decision({})])).toBeNull();
  expect(decidedLimits('piston-skirt', 2, skirt, [piston])).toMatchObject({
    low: 81.19,
    high: 81.21,
    wearLimit: 81.1,
  });
});

test('an undersize crankpin, which both rods share, goes down with its rods', () => {
  const pin = { low: 33.95, high: 33.966, aim: null, wearLimit: 33.9 };
  const ground = decision({
    subject: 'crankshaft',
    cylinder: 0,
    choice: 'undersize',
    machineTo: null,
  });
  for (const cylinder of [1, 2])
    expect(decidedLimits('crankpin', cylinder, pin, [ground])).toMatchObject({
      low: 33.7,
      high: 33.716,
      wearLimit: 33.65,
      step: -0.25,
    });
});

test('honed, reused or replaced, a part keeps the limits of the book', () => {
  for (const choice of ['reuse', 'hone', 'replace'] as const)
    expect(
      decidedLimits('bore', 2, BORE, [decision({ choice, step: null, machineTo: null })]),
    ).toBeNull();
});

describe('an engine that was bored on an earlier job', () => {
  const cameWith = sizesItCameWith([decision({ cylinder: 1, step: 0.5 }), decision({})]);

  test('is held to that size as it comes in', () => {
    const place = limitsOfPlace('bore', 2, BORE, { cameWith, standing: [] });
    expect(place).toMatchObject({ low: 81.25, wearLimit: 81.35, decided: null });
    expect(limitsInPhase(place, 'as-received').high).toBe(81.27);
    expect(limitsInPhase(place, 'final').high).toBe(81.27);
    expect(stepInPhase('bore', 2, 'as-received', { cameWith, standing: [] })).toBe(0.25);
  });

  test('and to the next one once this job decides on it', () => {
    const standing = [decision({ step: 0.5, machineTo: null })];
    const place = limitsOfPlace('bore', 2, BORE, { cameWith, standing });
    expect(limitsInPhase(place, 'as-received').low).toBe(81.25);
    expect(limitsInPhase(place, 'after-machining').low).toBe(81.5);
    expect(stepInPhase('bore', 2, 'final', { cameWith, standing })).toBe(0.5);
  });

  test('a new cylinder brings the book’s size back, on this job or before it', () => {
    const standing = [decision({ choice: 'replace', step: null, machineTo: null })];
    const place = limitsOfPlace('bore', 2, BORE, { cameWith, standing });
    expect(limitsInPhase(place, 'as-received').low).toBe(81.25);
    expect(limitsInPhase(place, 'final').low).toBe(81);
    expect(stepInPhase('bore', 2, 'final', { cameWith, standing })).toBe(0);
    expect(sizesItCameWith([decision({}), ...standing])).toEqual([]);
  });

  test('what was only honed or kept since leaves the size as it was', () => {
    expect(sizesItCameWith([decision({}), decision({ choice: 'hone', step: null })])).toEqual([
      decision({}),
    ]);
  });
});
