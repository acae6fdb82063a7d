import type { GaugeKind } from '../../shared/work/vocabulary.ts';
import type { SpecificationUnit } from './engines/engine.ts';
import type { StaffKey } from './staff.ts';

export interface DemoGauge {
  name: string;
  kind: GaugeKind;
  unit: SpecificationUnit;
  rangeLow: number;
  rangeHigh: number;
  resolution: number;
  maxError: number;
  /** Of a torque wrench: drive to grip, mm. */
  length?: number;
  /** Days from today, negative for the past. */
  calibrated: number;
  due: number;
  certificate: string;
}

/** The gauges of the invented shop. The dial indicator is overdue, so that papers show what that looks like. */
export const DEMO_GAUGES = {
  'feeler-mm': {
    name: 'Feeler set F1, metric',
    kind: 'feeler-gauge',
    unit: 'mm',
    rangeLow: 0.03,
    rangeHigh: 1.5,
    resolution: 0.01,
    maxError: 0.004,
    calibrated: -260,
    due: 105,
    certificate: 'HF-F1-7',
  },
  'feeler-in': {
    name: 'Feeler set F2, inch',
    kind: 'feeler-gauge',
    unit: 'in',
    rangeLow: 0.001,
    rangeHigh: 0.06,
    resolution: 0.001,
    maxError: 0.0002,
    calibrated: -260,
    due: 105,
    certificate: 'HF-F2-7',
  },
  'plug-wire': {
    name: 'Plug wire gauge P1',
    kind: 'other',
    unit: 'mm',
    rangeLow: 0.4,
    rangeHigh: 1.2,
    resolution: 0.05,
    maxError: 0.01,
    calibrated: -310,
    due: 420,
    certificate: 'HF-P1-2',
  },
  'micrometer-25': {
    name: 'Micrometer M1, 0–25 mm',
    kind: 'micrometer',
    unit: 'mm',
    rangeLow: 0,
    rangeHigh: 25,
    resolution: 0.001,
    maxError: 0.002,
    calibrated: -255,
    due: 110,
    certificate: 'CL 24-1180',
  },
  'micrometer-50': {
    name: 'Micrometer M2, 25–50 mm',
    kind: 'micrometer',
    unit: 'mm',
    rangeLow: 25,
    rangeHigh: 50,
    resolution: 0.001,
    maxError: 0.002,
    calibrated: -255,
    due: 110,
    certificate: 'CL 24-1181',
  },
  'micrometer-50-fine': {
    name: 'Indicating micrometer M5, 25–50 mm',
    kind: 'micrometer',
    unit: 'mm',
    rangeLow: 25,
    rangeHigh: 50,
    resolution: 0.0002,
    maxError: 0.0007,
    calibrated: -200,
    due: 165,
    certificate: 'CL 25-0212',
  },
  'micrometer-75': {
    name: 'Micrometer M3, 50–75 mm',
    kind: 'micrometer',
    unit: 'mm',
    rangeLow: 50,
    rangeHigh: 75,
    resolution: 0.001,
    maxError: 0.003,
    calibrated: -255,
    due: 110,
    certificate: 'CL 24-1182',
  },
  'micrometer-100': {
    name: 'Micrometer M4, 75–100 mm',
    kind: 'micrometer',
    unit: 'mm',
    rangeLow: 75,
    rangeHigh: 100,
    resolution: 0.001,
    maxError: 0.003,
    calibrated: -255,
    due: 110,
    certificate: 'CL 24-1183',
  },
  'micrometer-depth': {
    name: 'Depth micrometer M6, 0–25 mm',
    kind: 'micrometer',
    unit: 'mm',
    rangeLow: 0,
    rangeHigh: 25,
    resolution: 0.01,
    maxError: 0.005,
    calibrated: -255,
    due: 110,
    certificate: 'CL 24-1184',
  },
  burette: {
    name: 'Burette V1, 50 cm³',
    kind: 'other',
    unit: 'cm3',
    rangeLow: 0,
    rangeHigh: 50,
    resolution: 0.1,
    maxError: 0.1,
    calibrated: -300,
    due: 430,
    certificate: 'HF-V1-1',
  },
  'small-hole': {
    name: 'Small-hole gauge S1, 4–10 mm',
    kind: 'bore-gauge',
    unit: 'mm',
    rangeLow: 4,
    rangeHigh: 10,
    resolution: 0.001,
    maxError: 0.003,
    calibrated: -248,
    due: 117,
    certificate: 'CL 24-1189',
  },
  'bore-35': {
    name: 'Bore gauge B1, 10–35 mm',
    kind: 'bore-gauge',
    unit: 'mm',
    rangeLow: 10,
    rangeHigh: 35,
    resolution: 0.001,
    maxError: 0.003,
    calibrated: -248,
    due: 117,
    certificate: 'CL 24-1190',
  },
  'bore-100': {
    name: 'Bore gauge B2, 35–100 mm',
    kind: 'bore-gauge',
    unit: 'mm',
    rangeLow: 35,
    rangeHigh: 100,
    resolution: 0.001,
    maxError: 0.002,
    calibrated: -248,
    due: 117,
    certificate: 'CL 24-1191',
  },
  dial: {
    name: 'Dial indicator D1',
    kind: 'dial-indicator',
    unit: 'mm',
    rangeLow: 0,
    rangeHigh: 10,
    resolution: 0.01,
    maxError: 0.013,
    calibrated: -403,
    due: -38,
    certificate: 'CL 23-0877',
  },
  'wrench-60': {
    name: 'Torque wrench T1, 5–60 N·m',
    kind: 'torque-wrench',
    unit: 'N·m',
    rangeLow: 5,
    rangeHigh: 60,
    resolution: 0.1,
    maxError: 0.25,
    length: 318,
    calibrated: -120,
    due: 245,
    certificate: 'CL 25-0416',
  },
  'wrench-20': {
    name: 'Torque wrench T2, 2–20 N·m',
    kind: 'torque-wrench',
    unit: 'N·m',
    rangeLow: 2,
    rangeHigh: 20,
    resolution: 0.05,
    maxError: 0.08,
    length: 204,
    calibrated: -120,
    due: 245,
    certificate: 'CL 25-0417',
  },
  pressure: {
    name: 'Compression gauge C1',
    kind: 'pressure-gauge',
    unit: 'kPa',
    rangeLow: 0,
    rangeHigh: 2000,
    resolution: 10,
    maxError: 20,
    calibrated: -180,
    due: 185,
    certificate: 'CL 25-0330',
  },
  ohmmeter: {
    name: 'Multimeter R1',
    kind: 'ohmmeter',
    unit: 'Ω',
    rangeLow: 0.1,
    rangeHigh: 20_000,
    resolution: 1,
    maxError: 40,
    calibrated: -150,
    due: 215,
    certificate: 'CL 25-0361',
  },
  tachometer: {
    name: 'Tachometer N1',
    kind: 'tachometer',
    unit: 'rpm',
    rangeLow: 200,
    rangeHigh: 20_000,
    resolution: 10,
    maxError: 10,
    calibrated: -140,
    due: 225,
    certificate: 'CL 25-0402',
  },
} as const satisfies Record<string, DemoGauge>;

export type GaugeKey = keyof typeof DEMO_GAUGES;

/** A check that a gauge had since the shop opened; days from today. */
export interface DemoGaugeCheck {
  gauge: GaugeKey;
  on: number;
  by: StaffKey;
  good: boolean;
  due?: number;
  certificate?: string;
  note: string;
}

export const DEMO_GAUGE_CHECKS: readonly DemoGaugeCheck[] = [
  {
    gauge: 'bore-100',
    on: -96,
    by: 'ignacio',
    good: true,
    due: 269,
    certificate: 'CL 26-0518',
    note: 'Against the 50 and 80 mm setting rings: 1 µm over at most.',
  },
  {
    gauge: 'feeler-in',
    on: -64,
    by: 'wren',
    good: false,
    note: 'Leaf .010 creased; the others hold against the micrometer.',
  },
  {
    gauge: 'feeler-in',
    on: -62,
    by: 'wren',
    good: true,
    due: 303,
    certificate: 'HF-F2-8',
    note: 'Leaf .010 replaced, all leaves held against micrometer M1.',
  },
];
