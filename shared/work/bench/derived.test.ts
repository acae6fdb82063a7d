import { describe, expect, test } from 'vitest';
import { derivedFrom, type StandingReading } from './derived.ts';

const reading = (
  feature: StandingReading['feature'],
  place: string,
  value: number,
  more: Partial<StandingReading> = {},
): StandingReading => ({
  feature,
  place,
  cylinder: 1,
  phase: 'final',
  value,
  uncertainty: 0.006,
  ...more,
});

const named = (readings: StandingReading[]) =>
  new Map(derivedFrom(readings).map((value) => [value.feature, value]));

describe('derived values', () => {
  test('the tightest spot decides a clearance, and its uncertainty is the root of squares', () => {
    const values = named([
      reading('bore', 'c1-top-along', 68.03),
      reading('bore', 'c1-bottom-along', 68.01),
      reading('piston-skirt', 'c1-only', 67.95, { uncertainty: 0.008 }),
    ]);
    expect(values.get('piston-clearance')).toMatchObject({
      value: expect.closeTo(0.06, 9),
      uncertainty: expect.closeTo(0.01, 9),
    });
    expect(values.get('bore-taper')?.value).toBeCloseTo(0.02, 9);
  });

  test('a clearance carries its loosest spot, and nothing where both are the same', () => {
    const worn = named([
      reading('rod-big-end', 'c1-only', 30.005, { uncertainty: 0.006 }),
      reading('crankpin', 'c1-first', 29.955),
      reading('crankpin', 'c1-second', 29.89, { uncertainty: 0.008 }),
    ]).get('rod-clearance');
    expect(worn).toMatchObject({
      value: expect.closeTo(0.05, 9),
      largest: { value: expect.closeTo(0.115, 9), uncertainty: expect.closeTo(0.01, 9) },
    });
    const round = named([
      reading('rod-big-end', 'c1-only', 30.005),
      reading('crankpin', 'c1-first', 29.955),
      reading('crankpin', 'c1-second', 29.955),
    ]).get('rod-clearance');
    expect(round?.largest).toBeNull();
  });

  test('one reading gives no taper and no out-of-round: a nought would look like a finding', () => {
    expect(named([reading('bore', 'c1-top-along', 68.03)]).size).toBe(0);
    expect([
      ...named([
        reading('bore', 'c1-top-along', 68.03),
        reading('bore', 'c1-top-across', 68.05),
      ]).keys(),
    ]).toEqual(['bore-out-of-round']);
  });

  test('cylinders and phases are kept apart', () => {
    const values = derivedFrom([
      reading('rod-big-end', 'c1-only', 30.04),
      reading('crankpin', 'c1-first', 30),
      reading('crankpin', 'c2-first', 29.98, { cylinder: 2 }),
      reading('rod-big-end', 'c2-only', 30.04, { cylinder: 2, phase: 'as-received' }),
    ]);
    expect(values).toEqual([
      expect.objectContaining({ feature: 'rod-clearance', cylinder: 1, phase: 'final' }),
    ]);
  });
});

describe('what follows from valves, journals and volumes', () => {
  const engine = { bore: 68, stroke: 45, cylinders: 1 };
  const values = (readings: StandingReading[], of = engine) =>
    new Map(derivedFrom(readings, of).map((value) => [value.feature, value]));

  test('wear is counted from the nominal bore, at the most worn spot', () => {
    const bore = [reading('bore', 'c1-top-along', 68.03), reading('bore', 'c1-top-across', 68.05)];
    expect(values(bore).get('bore-wear')).toMatchObject({
      value: expect.closeTo(0.05, 9),
      uncertainty: 0.006,
    });
    expect(named(bore).has('bore-wear')).toBe(false);
  });

  test('stem clearance and lift are differences, and so are their uncertainties', () => {
    const found = values([
      reading('valve-guide-intake', 'c1-only', 6.02),
      reading('valve-stem-intake', 'c1-only', 5.97, { uncertainty: 0.008 }),
      reading('valve-travel-exhaust', 'c1-closed', 0.02),
      reading('valve-travel-exhaust', 'c1-open', 6.32, { uncertainty: 0.008 }),
    ]);
    expect(found.get('stem-clearance-intake')).toMatchObject({
      value: expect.closeTo(0.05, 9),
      uncertainty: expect.closeTo(0.01, 9),
    });
    expect(found.get('valve-lift-exhaust')).toMatchObject({
      value: expect.closeTo(6.3, 9),
      uncertainty: expect.closeTo(0.01, 9),
    });
    expect(found.has('valve-lift-intake')).toBe(false);
  });

  test('the worse side of the crankshaft decides its out-of-round', () => {
    const found = values([
      reading('main-journal', 'c1-flywheel-first', 25),
      reading('main-journal', 'c1-flywheel-second', 24.99),
      reading('main-journal', 'c1-output-first', 25.03),
      reading('main-journal', 'c1-output-second', 25.01),
      reading('crankpin', 'c1-first', 30),
    ]);
    expect(found.get('main-journal-out-of-round')).toMatchObject({
      cylinder: 0,
      value: expect.closeTo(0.02, 9),
    });
    expect(found.has('crankpin-out-of-round')).toBe(false);
  });

  test('displacement is of the whole engine, and waits for every cylinder', () => {
    const twin = { ...engine, cylinders: 2 };
    const first = reading('bore', 'c1-top-along', 68);
    const second = reading('bore', 'c2-top-along', 68, { cylinder: 2 });
    expect(values([first], twin).has('displacement')).toBe(false);
    const both = values([first, second], twin).get('displacement');
    // 2 · π/4 · 6.8² · 4.5; dV/V = 2 dB/B.
    expect(both?.value).toBeCloseTo(326.85, 2);
    expect((both?.uncertainty ?? 0) / (both?.value ?? 1)).toBeCloseTo((2 * 0.006) / 68, 6);
  });

  test('a compression ratio waits for chamber, gasket and deck, and carries their uncertainty', () => {
    const parts = [
      reading('bore', 'c1-top-along', 68),
      reading('chamber-volume', 'c1-only', 18, { uncertainty: 0.2 }),
      reading('gasket-thickness', 'c1-only', 1.2, { uncertainty: 0 }),
    ];
    expect(values(parts).has('compression-ratio')).toBe(false);
    const ratio = values([
      ...parts,
      reading('deck-clearance', 'c1-only', 0, { uncertainty: 0 }),
    ]).get('compression-ratio');
    const swept = (Math.PI / 4) * 6.8 ** 2 * 4.5;
    const left = 18 + (Math.PI / 4) * 6.8 ** 2 * 0.12;
    expect(ratio?.value).toBeCloseTo((swept + left) / left, 9);
    // dr/dV of the chamber is −swept/left², by far the largest share here.
    expect(ratio?.uncertainty).toBeCloseTo((swept / left ** 2) * 0.2, 2);
  });
});
