import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fellowsOf, suspectPairSlip } from './pair-slip.ts';

describe('two readings of one pair', () => {
  test.each([
    ['coil-air-gap', 0.03, [0.28], { kind: 'decimal', likely: 0.3 }],
    ['coil-air-gap', 3, [0.28], { kind: 'decimal', likely: 0.3 }],
    ['ring-end-gap', 0.01, [0.26], { kind: 'inch', likely: 0.254 }],
    ['crankpin', 2.997, [29.971], { kind: 'decimal', likely: 29.97 }],
    ['bore', 680.2, [68.021, 68.024], { kind: 'decimal', likely: 68.02 }],
    ['bore', 2.6787, [68.021], { kind: 'inch', likely: expect.closeTo(68.039, 3) }],
    ['head-bolt-torque', 276, [23], { kind: 'foot-inch', likely: 23 }],
  ] as const)('%s: %d beside %j is questioned', (feature, value, fellows, slip) => {
    expect(suspectPairSlip(feature, value, fellows)).toEqual(slip);
  });

  test('an honest difference is none, and without a fellow nothing is said', () => {
    expect(suspectPairSlip('coil-air-gap', 0.3, [0.25])).toBeNull();
    expect(suspectPairSlip('coil-air-gap', 0.6, [0.25])).toBeNull();
    expect(suspectPairSlip('coil-air-gap', 0.03, [])).toBeNull();
    expect(suspectPairSlip('coil-air-gap', 0, [0.25])).toBeNull();
  });

  test('twelve is not asked of a length', () => {
    expect(suspectPairSlip('crankshaft-end-play', 0.3, [0.3 * 20])).toBeNull();
  });

  test('readings within a factor of three of each other are never questioned', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: 1 / 3, max: 3, noNaN: true }),
        (size, factor) => {
          expect(suspectPairSlip('ring-end-gap', size * factor, [size])).toBeNull();
        },
      ),
    );
  });

  test('a decimal slip against a fellow that agrees is always found', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 90, noNaN: true }),
        fc.double({ min: 0.75, max: 1.3, noNaN: true }),
        fc.constantFrom(10, 0.1),
        (size, factor, slip) => {
          expect(suspectPairSlip('bore', size * factor * slip, [size])?.kind).toBe('decimal');
        },
      ),
    );
  });
});

describe('who is beside whom', () => {
  const at = (place: string, cylinder: number) => ({ place, cylinder, share: 1 });
  test('other places of the same cylinder', () => {
    const standing = [at('c1-leg-1', 1), at('c1-leg-2', 1), at('c2-leg-1', 2)];
    expect(fellowsOf('coil-air-gap', at('c1-leg-1', 1), standing)).toEqual([at('c1-leg-2', 1)]);
  });
  test('a valve closed is no fellow of the same valve open', () => {
    expect(fellowsOf('valve-travel-intake', at('c1-open', 1), [at('c1-closed', 1)])).toEqual([]);
  });
});
