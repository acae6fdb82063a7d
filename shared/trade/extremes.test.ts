import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  aim,
  airPressure,
  boreReport,
  clearance,
  compressionRatio,
  convert,
  fitLine,
  fuelMix,
  gaugeUncertainty,
  judge,
  proofLoad,
  resistanceAt20,
  ringGap,
  stressArea,
  suspectSlip,
  sweptVolume,
  tighteningTorque,
  toReference,
  torquePlausibility,
  torqueStages,
  UNITS,
  wrenchSetting,
} from './index.ts';

/** What came by mistake may be of any size: the answer is a number or a refusal, never Infinity or NaN. */
describe('figures of any size', () => {
  const bolt = { diameter: 8, pitch: 1.25, propertyClass: '8.8' } as const;
  const calls: Record<string, (a: number, b: number, c: number) => unknown> = {
    convert: (a) =>
      UNITS.map((unit) => refusedOr(() => convert(a, unit, unit === 'in' ? 'um' : unit))),
    aim: (a, b) => aim({ low: Math.min(a, b), high: Math.max(a, b) }),
    judge: (a, b, c) =>
      judge({ value: a, low: Math.min(b, c), high: Math.max(b, c), uncertainty: a }),
    suspectSlip: (a, b, c) => suspectSlip(a, { low: Math.min(b, c), high: Math.max(b, c) }),
    clearance: (a, b, c) => clearance({ value: a, uncertainty: b }, { value: c, uncertainty: a }),
    gaugeUncertainty: (a, b, c) =>
      gaugeUncertainty({ resolution: a, maxError: b, repeatability: c }),
    boreReport: (a, b, c) =>
      boreReport([{ level: 1, axis: 1, value: a }], { nominal: b, oversizes: [c], allowance: c }),
    toReference: (a) => toReference(a, 35, 11.5e-6),
    sweptVolume: (a, b) => sweptVolume({ bore: a, stroke: b, cylinders: 2 }),
    compressionRatio: (a, b, c) => compressionRatio({ bore: a, stroke: b, chamber: c }),
    airPressure: (a) => airPressure(a),
    stressArea: (a, b) => stressArea({ diameter: a, pitch: b }),
    proofLoad: (a, b) => proofLoad({ ...bolt, diameter: a, pitch: b }),
    tighteningTorque: (a, b) => tighteningTorque({ diameter: a, preload: b }),
    torquePlausibility: (a, b) => torquePlausibility({ ...bolt, torque: a, nutFactor: b }),
    wrenchSetting: (a, b, c) => wrenchSetting({ torque: a, wrench: b, extension: c }),
    torqueStages: (a) => torqueStages(a, [0.5, 1]),
    resistanceAt20: (a) => resistanceAt20({ resistance: a, temperature: -20 }),
    fuelMix: (a, b) => fuelMix({ fuel: a, ratio: b }),
    ringGap: (a, b) => ringGap({ bore: a, perBore: b }),
    fitLine: (a, b, c) =>
      fitLine([
        { x: a, y: b },
        { x: b, y: c },
        { x: c, y: a },
      ]),
  };

  const anySize = fc
    .tuple(fc.integer({ min: -323, max: 308 }), fc.integer({ min: 1, max: 17 }))
    .map(([power, digits]) => Number(`${digits / 10}e${power}`));

  it.each(Object.entries(calls))('%s', (_name, call) => {
    fc.assert(
      fc.property(anySize, anySize, anySize, (a, b, c) => {
        for (const number of numbersIn(refusedOr(() => call(a, b, c))))
          expect(Number.isFinite(number)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});

function refusedOr(call: () => unknown): unknown {
  try {
    return call();
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return null;
  }
}

function numbersIn(result: unknown): number[] {
  if (typeof result === 'number') return [result];
  return typeof result === 'object' && result !== null
    ? Object.values(result).flatMap(numbersIn)
    : [];
}
