import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseThread, stressArea, threadName, USUAL_THREADS } from '../../shared/trade/index.ts';

/**
 * Threads per inch of ASME B1.1, coarse (UNC) and fine (UNF): read in two published charts that agree on
 * every size here (echosupply.com ‘Unified national thread chart’; monsterbolts.com ‘US TPI’); the
 * standard itself was not read. Numbered sizes: 0.060 in + 0.013 in for each number (from memory; the
 * first chart's diameters agree but for #6, where it prints 0.136 and three others 0.138).
 */
describe('Unified threads, ASME B1.1', () => {
  it.each([
    ['#8', 0.164, 32, 36],
    ['#10', 0.19, 24, 32],
    ['#12', 0.216, 24, 28],
    ['1/4', 0.25, 20, 28],
    ['5/16', 0.3125, 18, 24],
    ['3/8', 0.375, 16, 24],
    ['7/16', 0.4375, 14, 20],
    ['1/2', 0.5, 13, 20],
    ['9/16', 0.5625, 12, 18],
    ['5/8', 0.625, 11, 18],
    ['3/4', 0.75, 10, 16],
    ['7/8', 0.875, 9, 14],
    ['1', 1, 8, 12],
  ])('%s', (size, inches, coarse, fine) => {
    for (const [perInch, series] of [
      [coarse, 'UNC'],
      [fine, 'UNF'],
    ] as const) {
      const whole = `${size}-${perInch} ${series}`;
      const thread = parseThread(whole);
      expect(thread.diameter).toBeCloseTo(inches * 25.4, 3);
      expect(thread.pitch).toBeCloseTo(25.4 / perInch, 4);
      expect(thread.standard).toBe(true);
      // With the series alone, with the threads alone, and back to its name.
      expect(parseThread(`${size} ${series}`)).toEqual(thread);
      expect(parseThread(`${size}-${perInch}`)).toEqual(thread);
      expect(threadName(thread)).toBe(whole);
    }
  });

  it('what contradicts itself, or leaves the pitch open, is refused with both figures', () => {
    expect(() => parseThread('5/16-18 UNF')).toThrow(/5\/16 UNF has 24/);
    expect(() => parseThread('5/16')).toThrow(/18 or 24/);
    expect(() => parseThread('5/17-18')).toThrow(RangeError);
    // A pitch outside both series exists (UNEF), and is said not to be of them.
    expect(parseThread('1/4-32')).toMatchObject({ standard: false });
  });
});

/**
 * Pitches of ISO 261: the coarse ones and the first fine ones as a published chart prints them
 * (induspecs.com ‘Metric thread pitch chart’, read); the others, and M7, M18, M22 and M27, from memory.
 */
describe('metric threads, ISO 261', () => {
  it.each([
    ['M3', 0.5, 0.35],
    ['M4', 0.7, 0.5],
    ['M5', 0.8, 0.5],
    ['M6', 1, 0.75],
    ['M8', 1.25, 1],
    ['M10', 1.5, 1.25],
    ['M12', 1.75, 1.5],
    ['M14', 2, 1.5],
    ['M16', 2, 1.5],
    ['M18', 2.5, 2],
    ['M18', 2.5, 1.5],
    ['M20', 2.5, 1.5],
    ['M22', 2.5, 1.5],
    ['M24', 3, 2],
    ['M27', 3, 2],
    ['M30', 3.5, 2],
  ])('%s', (name, coarse, fine) => {
    const diameter = Number(name.slice(1));
    expect(parseThread(name)).toEqual({ diameter, pitch: coarse, standard: true });
    expect(parseThread(`${name}×${fine}`)).toEqual({ diameter, pitch: fine, standard: true });
  });

  it.each(['M8×1.25', 'M8x1.25', 'm8 x 1,25', 'M 8 × 1.25', 'M8*1.25', 'M8-1.25'])(
    '%s is one thread',
    (text) => {
      expect(parseThread(text)).toEqual({ diameter: 8, pitch: 1.25, standard: true });
    },
  );

  it('a pitch that the standard has not is kept and said so; one that can’t be is refused', () => {
    expect(parseThread('M8×1.5')).toMatchObject({ pitch: 1.5, standard: false });
    for (const text of ['M8×8', 'M8×0', 'M9', 'M', '8', '', 'R 1/4', 'M8×1.25×30'])
      expect(() => parseThread(text), text).toThrow(RangeError);
  });
});

describe('any thread', () => {
  it('that is offered can be read, and is called what it is offered as', () => {
    expect(USUAL_THREADS.length).toBeGreaterThan(25);
    for (const name of USUAL_THREADS) {
      const thread = parseThread(name);
      expect(threadName(thread)).toBe(name);
      expect(stressArea(thread)).toBeGreaterThan(0);
    }
  });

  it('is read or refused in a sentence, whatever is typed', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.stringMatching(/^[M#]?[0-9/x×.,-]{1,8}( UN[CF])?$/)),
        (text) => {
          try {
            const { diameter, pitch } = parseThread(text);
            expect(pitch > 0 && pitch < diameter / 2).toBe(true);
          } catch (error) {
            expect(error).toBeInstanceOf(RangeError);
          }
        },
      ),
    );
  });
});
