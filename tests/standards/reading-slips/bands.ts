import type { Unit } from '../../../shared/trade/index.ts';
import type { MeasuredFeature } from '../../../shared/work/features.ts';

/** What a reading is taken against: limits and the gauge's step in the unit of the field. */
export interface FieldBand {
  readonly feature: MeasuredFeature;
  readonly unit: Unit;
  readonly low: number | null;
  readonly high: number | null;
  readonly wearLimit: number | null;
  readonly resolution: number | null;
}

const band = (
  feature: MeasuredFeature,
  unit: Unit,
  [low, high, wearLimit]: readonly [number | null, number | null, number | null],
  resolution: number | null,
): FieldBand => ({ feature, unit, low, high, wearLimit, resolution });

/** Invented engines, no source: figures as small engines have them. */
export const BANDS = {
  bore68: band('bore', 'mm', [68, 68.015, 68.1], 0.001),
  bore67: band('bore', 'mm', [67, 67.015, 67.08], 0.01),
  boreInch: band('bore', 'in', [2.687, 2.688, 2.691], 0.0001),
  bore89: band('bore', 'mm', [89, 89.02, 89.1], 0.001),
  bore47: band('bore', 'mm', [47, 47.012, 47.06], null),
  skirt68: band('piston-skirt', 'mm', [67.95, 67.965, 67.88], 0.001),
  skirt47: band('piston-skirt', 'mm', [46.945, 46.957, 46.88], 0.01),
  pin30: band('crankpin', 'mm', [29.96, 29.973, 29.92], 0.001),
  pin18: band('crankpin', 'mm', [17.982, 17.993, 17.95], 0.001),
  pinInch: band('crankpin', 'in', [0.999, 0.9995, 0.997], 0.0001),
  rod30: band('rod-big-end', 'mm', [30, 30.013, 30.05], 0.001),
  journal25: band('main-journal', 'mm', [24.975, 24.985, 24.94], 0.001),
  stem6: band('valve-stem-intake', 'mm', [5.97, 5.985, 5.93], 0.001),
  stemInch: band('valve-stem-exhaust', 'in', [0.246, 0.247, 0.244], 0.0001),
  guide6: band('valve-guide-intake', 'mm', [6, 6.015, 6.06], 0.001),
  ring: band('ring-end-gap', 'mm', [0.15, 0.35, 0.8], 0.05),
  ringInch: band('ring-end-gap', 'in', [0.007, 0.017, 0.03], 0.001),
  side: band('ring-side-clearance', 'mm', [0.02, 0.06, 0.15], 0.01),
  crankPlay: band('crankshaft-end-play', 'mm', [0.05, 0.4, 0.6], 0.01),
  camPlay: band('camshaft-end-play', 'mm', [0.05, 0.25, null], 0.01),
  headFlat: band('head-flatness', 'mm', [null, 0.08, null], 0.01),
  coilGap: band('coil-air-gap', 'mm', [0.2, 0.4, null], 0.01),
  coilGapInch: band('coil-air-gap', 'in', [0.008, 0.014, null], 0.001),
  lashIn: band('valve-lash-intake', 'mm', [0.13, 0.17, null], 0.01),
  lashEx: band('valve-lash-exhaust', 'mm', [0.18, 0.22, null], 0.01),
  lashInch: band('valve-lash-exhaust', 'in', [0.007, 0.009, null], 0.001),
  plug: band('plug-gap', 'mm', [0.7, 0.8, null], 0.05),
  plugInch: band('plug-gap', 'in', [0.028, 0.032, null], 0.001),
  gasket: band('gasket-thickness', 'mm', [1.1, 1.3, null], 0.01),
  chamber: band('chamber-volume', 'cm3', [24, 26, null], 0.1),
  spring: band('valve-spring-length', 'mm', [34, 35, 32.5], 0.05),
  seat: band('seat-width', 'mm', [1.2, 1.6, 2], 0.05),
  rodBolt: band('rod-bolt-torque', 'N·m', [11, 13, null], 0.5),
  rodBoltInch: band('rod-bolt-torque', 'lbf·in', [100, 120, null], 5),
  head: band('head-bolt-torque', 'N·m', [24, 27, null], 0.5),
  headFoot: band('head-bolt-torque', 'lbf·ft', [16, 18, null], 0.5),
  flywheel: band('flywheel-nut-torque', 'N·m', [60, 70, null], 1),
  plugTorque: band('plug-torque', 'N·m', [18, 22, null], 1),
  pressure: band('compression', 'kPa', [600, 900, null], 10),
  pressurePsi: band('compression', 'psi', [90, 120, null], 5),
  pressureBar: band('compression', 'bar', [6, 9, null], 0.1),
  pressureLow: band('compression', 'kPa', [380, null, null], 10),
  coil: band('coil-resistance', 'kΩ', [2.6, 3.4, null], 0.01),
  coilOhm: band('coil-resistance', 'Ω', [2_600, 3_400, null], 10),
  stator: band('coil-resistance', 'Ω', [0.8, 1.2, null], 0.1),
  noGaugeLash: band('valve-lash-intake', 'mm', [0.13, 0.18, null], null),
  noGaugeThou: band('valve-lash-intake', 'thou', [4, 8, null], null),
  noGaugeRing: band('ring-end-gap', 'mm', [0.2, 0.6, null], null),
  noGaugeHead: band('head-bolt-torque', 'lbf·ft', [15, 19, null], null),
  noGaugeRod: band('rod-bolt-torque', 'lbf·ft', [8, 10, null], null),
  noGaugeFlywheel: band('flywheel-nut-torque', 'lbf·in', [600, 720, null], null),
  noGaugePressure: band('compression', 'psi', [80, 120, null], null),
  unknownBore: band('bore', 'mm', [null, null, null], 0.001),
} as const satisfies Record<string, FieldBand>;

export type BandName = keyof typeof BANDS;
