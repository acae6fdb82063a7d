import fc from 'fast-check';
import { expect, test } from 'vitest';
import { convert } from '../../trade/index.ts';
import { wrenchMark } from './wrench-mark.ts';

const bare = { target: 17, unit: 'lbf·ft', extension: 0, angle: 0, wrenchLength: null } as const;

test('without a wrench of the list the figure of the source is the setting', () => {
  expect(wrenchMark({ ...bare, wrench: null })).toEqual({
    setting: 17,
    unit: 'lbf·ft',
    atBolt: 17,
  });
});

test('in the wrench’s own unit, on a mark of its scale', () => {
  const wrench = { unit: 'N·m', resolution: 0.5 } as const;
  expect(wrenchMark({ ...bare, wrench })).toEqual({ setting: 23, unit: 'N·m', atBolt: 23 });
  const long = { ...bare, wrench, extension: 60, wrenchLength: 240 };
  // 23.05 · 240/300 = 18.44, set to 18.5, which is 23.125 at the bolt.
  expect(wrenchMark(long)).toEqual({ setting: 18.5, unit: 'N·m', atBolt: 23.13 });
  expect(wrenchMark({ ...long, angle: 90 }).setting).toBe(23);
});

test('an extension without the wrench’s length, or folded back past it, has no setting', () => {
  expect(() => wrenchMark({ ...bare, wrench: null, extension: 60 })).toThrow(RangeError);
  expect(() =>
    wrenchMark({ ...bare, wrench: null, extension: 250, angle: 180, wrenchLength: 240 }),
  ).toThrow(RangeError);
});

test('what the bolt gets is never further from the target than half a mark through the lever', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 120, noNaN: true }),
      fc.double({ min: 0, max: 200, noNaN: true }),
      fc.integer({ min: -90, max: 90 }),
      fc.constantFrom(0.1, 0.5, 1),
      (target, extension, angle, resolution) => {
        const hand = { target, unit: 'lbf·ft', extension, angle, wrenchLength: 300 } as const;
        const { atBolt } = wrenchMark({ ...hand, wrench: { unit: 'N·m', resolution } });
        const wanted = convert(target, 'lbf·ft', 'N·m');
        const lever = (300 + extension) / 300;
        expect(Math.abs(atBolt - wanted)).toBeLessThanOrEqual(
          (resolution / 2) * lever + atBolt * 1e-3,
        );
      },
    ),
  );
});
