import { describe, expect, it } from 'vitest';
import { acceptedBand, isWornButGood } from '../reading-verdict.ts';
import { limitsInPhase, limitsOfPlace, type SizeDecision } from './decided-limits.ts';
import { isRenewed, renewalsOf } from './renewed-parts.ts';

const decided = (
  subject: SizeDecision['subject'],
  choice: SizeDecision['choice'],
  step: number | null = null,
  cylinder = 1,
): SizeDecision => ({ subject, choice, step, cylinder, machineTo: null });

const BORE = { low: 67, high: 67.015, aim: null, wearLimit: 67.08 };
const place = (standing: SizeDecision[]) =>
  limitsOfPlace('bore', 1, BORE, { cameWith: [], standing });

describe('what is machined or replaced', () => {
  const bored = place([decided('cylinder', 'next-oversize', 0.25)]);

  it('is held to the new limits in both later phases, and never to the wear limit', () => {
    for (const phase of ['after-machining', 'final'] as const) {
      const limits = limitsInPhase(bored, phase);
      expect(acceptedBand('bore', limits, phase)).toEqual({ low: 67.25, high: 67.265 });
      expect(isWornButGood('bore', 67.3, limits, phase)).toBe(false);
    }
  });

  it('is held to the wear limit as it came', () => {
    expect(acceptedBand('bore', limitsInPhase(bored, 'as-received'), 'as-received')).toEqual({
      low: 67,
      high: 67.08,
    });
  });

  it('keeps the wear limit where it is used again, or only honed', () => {
    for (const standing of [[], [decided('cylinder', 'reuse')], [decided('cylinder', 'hone')]])
      expect(acceptedBand('bore', limitsInPhase(place(standing), 'final'), 'final').high).toBe(
        67.08,
      );
  });

  it('is held to the limits of a new part when it is replaced at its own size', () => {
    const replaced = place([decided('cylinder', 'replace')]);
    expect(acceptedBand('bore', limitsInPhase(replaced, 'final'), 'final')).toEqual({
      low: 67,
      high: 67.015,
    });
  });
});

describe('a fit', () => {
  const bored = decided('cylinder', 'next-oversize', 0.25);
  const piston = decided('piston', 'next-oversize', 0.25);

  it('is a new one when both of its parts are', () => {
    expect(isRenewed('piston-clearance', 1, [bored, piston])).toBe(true);
    expect(isRenewed('piston-clearance', 1, [bored])).toBe(false);
    expect(isRenewed('rod-clearance', 1, [decided('crankshaft', 'undersize', 0.25, 0)])).toBe(
      false,
    );
  });

  it('of another cylinder is none of it', () => {
    expect(isRenewed('bore', 2, [bored])).toBe(false);
    expect(isRenewed('crankpin', 2, [decided('crankshaft', 'replace', null, 0)])).toBe(true);
  });

  it('names the decisions that make it new', () => {
    expect(renewalsOf('bore', 1, [bored, piston])).toEqual([bored]);
    expect(renewalsOf('plug-gap', 1, [bored, piston])).toEqual([]);
  });
});
