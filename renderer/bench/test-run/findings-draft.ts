import { parseReading, toBase, type Unit } from '../../../shared/trade/index.ts';
import { quantityOf } from '../../../shared/work/bench/build-steps.ts';
import type {
  CheckOutcome,
  LeakPath,
  TestRunFindings,
} from '../../../shared/work/bench/test-run.ts';
import type { MachineKind } from '../../../shared/work/vocabulary.ts';

/** What stands in the fields of a test run before it is recorded: texts as typed. */
export interface FindingsDraft {
  idleSpeed: string;
  topSpeed: string;
  /** By cylinder. */
  compression: string[];
  pressureUnit: 'kPa' | 'psi';
  leakDown: { percent: string; path: LeakPath }[];
  stopSwitch: CheckOutcome;
  interlocks: CheckOutcome;
  governor: CheckOutcome;
  fuelTight: CheckOutcome;
  chainBrake: CheckOutcome;
  bladeStop: string;
  notFittedWhy: string;
  outputVolts: string;
  outputAmps: string;
  leaks: string;
  note: string;
}

export const EMPTY_FINDINGS: FindingsDraft = {
  idleSpeed: '',
  topSpeed: '',
  compression: [],
  pressureUnit: 'kPa',
  leakDown: [],
  stopSwitch: 'not-tried',
  interlocks: 'not-tried',
  governor: 'not-tried',
  fuelTight: 'not-tried',
  chainBrake: 'not-tried',
  bladeStop: '',
  notFittedWhy: '',
  outputVolts: '',
  outputAmps: '',
  leaks: '',
  note: '',
};

export interface ReadFindings {
  findings: TestRunFindings;
  /** Why a field can't be read, by the path that the desk gives it, too. */
  faults: Record<string, string>;
}

/** Reads the texts: what is empty was not measured, what can't be read is a fault at its field. */
export function readFindings(
  draft: FindingsDraft,
  { cylinders, machine }: { cylinders: number; machine: MachineKind },
  tachometer: string | null,
): ReadFindings {
  const faults: Record<string, string> = {};
  const figure = (path: string, text: string, unit: Unit): number | null => {
    if (text.trim() === '') return null;
    try {
      const reading = parseReading(text, unit);
      return toBase(reading.value, reading.unit);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      faults[path] = error.message;
      return null;
    }
  };
  const seconds = (text: string): number | null => {
    if (text.trim() === '') return null;
    const value = quantityOf(text);
    if (value === null) faults.bladeStop = 'Type the seconds, such as 2.4.';
    return value;
  };
  const each = Array.from({ length: cylinders }, (_, index) => index);
  const findings: TestRunFindings = {
    idleSpeed: figure('idleSpeed', draft.idleSpeed, 'rpm'),
    topSpeed: figure('topSpeed', draft.topSpeed, 'rpm'),
    compression: each.map((index) =>
      figure(`compression.${index}`, draft.compression[index] ?? '', draft.pressureUnit),
    ),
    leakDown: each.map((index) => ({
      percent: figure(`leakDown.${index}.percent`, draft.leakDown[index]?.percent ?? '', '%'),
      path: draft.leakDown[index]?.path ?? 'none',
    })),
    stopSwitch: draft.stopSwitch,
    interlocks: draft.interlocks,
    governor: draft.governor,
    fuelTight: draft.fuelTight,
    chainBrake: machine === 'chainsaw' ? draft.chainBrake : null,
    bladeStop: seconds(draft.bladeStop),
    notFittedWhy: draft.notFittedWhy,
    outputVolts: figure('outputVolts', draft.outputVolts, 'V'),
    outputAmps: figure('outputAmps', draft.outputAmps, 'A'),
    leaks: draft.leaks,
    note: draft.note,
    tachometer,
  };
  for (const [index, leak] of findings.leakDown.entries())
    if (leak.percent !== null && (leak.percent < 0 || leak.percent > 100))
      faults[`leakDown.${index}.percent`] = 'A leak is 0 to 100 per cent.';
  return { findings, faults };
}
