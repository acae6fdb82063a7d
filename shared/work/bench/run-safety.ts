import { display } from '../../trade/index.ts';
import { FEATURE_LABELS } from '../features.ts';
import { type Cycle, MACHINE_KIND_LABELS, type MachineKind } from '../vocabulary.ts';
import { type SpeedFound, speedBandWords, speedsNotMeasured } from './run-speed.ts';
import type { CheckOutcome, TestRunFindings } from './test-run.ts';

/** What a machine must show in a test run before anybody signs it off as passed. */

/** It must be there and work; it may be missing for a reason; such a machine has none. */
type Demand = 'must' | 'ask' | 'none';

interface RunDemands {
  stopSwitch: Demand;
  interlocks: Demand;
  governor: Demand;
  chainBrake: Demand;
  /** Seconds in which the blade stands still once its control is let go; null without a blade. */
  bladeStop: number | null;
}

type DemandedCheck = Exclude<keyof RunDemands, 'bladeStop'>;

const GUARDED: Partial<Record<MachineKind, Demand>> = {
  mower: 'must',
  'riding-mower': 'must',
  'snow-thrower': 'must',
  tiller: 'ask',
  chipper: 'ask',
  'log-splitter': 'ask',
  other: 'ask',
};

/**
 * Seconds. Walk-behind: 16 CFR 1205.5(a)(1)(iii), 3.0 s after the control is let go (read). Riding mower: 5 s,
 * ANSI/OPEI B71.1 and ISO 5395-3 (from memory). A maker's shorter time comes first.
 */
const BLADE_STOPS_IN: Partial<Record<MachineKind, number>> = { mower: 3, 'riding-mower': 5 };

/** Machines of which some are built without a stop switch or a governor. */
const BUILT_FREELY: readonly MachineKind[] = ['kart', 'other'];

/** Which checks a machine's run wants: by its kind and its engine's cycle. Common practice, no source. */
export function runDemands(kind: MachineKind, cycle: Cycle): RunDemands {
  const freely = BUILT_FREELY.includes(kind);
  return {
    stopSwitch: freely ? 'ask' : 'must',
    interlocks: GUARDED[kind] ?? 'none',
    governor: kind === 'chainsaw' ? 'none' : freely || cycle === 'two-stroke' ? 'ask' : 'must',
    chainBrake: kind === 'chainsaw' ? 'must' : 'none',
    bladeStop: BLADE_STOPS_IN[kind] ?? null,
  };
}

const CHECK_NAMES: Record<DemandedCheck, string> = {
  stopSwitch: 'Stop switch',
  interlocks: 'Safety interlocks',
  governor: 'Governor',
  chainBrake: 'Chain brake',
};

interface RunOn {
  machine: MachineKind;
  cycle: Cycle;
  speeds: readonly SpeedFound[];
  /** The speeds that the spec book has. */
  known: readonly string[];
}

/**
 * Why a run can't be signed off as passed, one reason each; empty when nothing stands against it. A check that
 * was not tried is as good as failed, and what a machine must have is not excused by its being gone.
 */
export function unsafeToPass(
  findings: TestRunFindings,
  { machine, cycle, speeds, known }: RunOn,
): string[] {
  const demands = runDemands(machine, cycle);
  const checks = (['stopSwitch', 'interlocks', 'governor', 'chainBrake'] as const).flatMap(
    (check) => {
      const why = whyNot(findings[check] ?? 'not-tried', {
        demand: demands[check],
        machine,
        why: findings.notFittedWhy,
      });
      return why === null ? [] : [`${CHECK_NAMES[check]}: ${why}`];
    },
  );
  return [
    ...checks,
    ...fuelAgainst(findings),
    ...bladeAgainst(findings.bladeStop, demands.bladeStop),
    ...speedsNotMeasured(known, findings).map(
      (feature) => `${FEATURE_LABELS[feature]}: not measured, and the spec book has it`,
    ),
    ...speedsOutside(speeds),
  ];
}

function whyNot(
  outcome: CheckOutcome,
  { demand, machine, why }: { demand: Demand; machine: MachineKind; why: string },
): string | null {
  if (outcome === 'works') return null;
  if (outcome === 'fails') return 'failed';
  // What such a machine never has is not missed.
  if (demand === 'none') return null;
  if (outcome === 'not-tried') return 'not tried';
  if (demand === 'must')
    return `not fitted, and a ${MACHINE_KIND_LABELS[machine].toLowerCase()} must have it`;
  return why.trim() === '' ? 'not fitted: say why' : null;
}

/** Fuel in what was written of leaks, unless it says that there was none of it. */
const NAMES_FUEL = /\b(fuel|petrol|gasoline|gas)\b/i;
const NO_FUEL = /\b(no|not|never|without|free of)\b[^.;,]*\b(fuel|petrol|gasoline|gas)\b/i;
/** In a note fuel may be named for many reasons; beside one of these it is where it must not be. */
const LEAKING = /\b(leak|drip|weep|seep|spray|spill|muffler|exhaust|onto|wet)/i;

/** A sentence that tells of fuel where none may be. */
const tellsOfFuel = (sentence: string, sure: boolean): boolean =>
  NAMES_FUEL.test(sentence) && !NO_FUEL.test(sentence) && (sure || LEAKING.test(sentence));

function fuelAgainst({ fuelTight, leaks, note }: TestRunFindings): string[] {
  if (fuelTight === 'fails') return ['Fuel system: leaks'];
  const sentences = (text: string) => text.split(/[.;,\n]/).map((each) => each.trim());
  const told =
    sentences(leaks).find((each) => tellsOfFuel(each, true)) ??
    sentences(note).find((each) => tellsOfFuel(each, false));
  if (told !== undefined) return [`Fuel system: “${told}” was written down`];
  return fuelTight === 'works' ? [] : ['Fuel system: not looked at for leaks'];
}

function bladeAgainst(seconds: number | null, limit: number | null): string[] {
  if (limit === null) return [];
  if (seconds === null) return ['Blade stop time: not measured'];
  return seconds > limit ? [`Blade stop time: ${seconds} s is longer than ${limit} s`] : [];
}

/** The speeds that are surely outside what the book allows; one too close to call is not sure. */
const speedsOutside = (speeds: readonly SpeedFound[]): string[] =>
  speeds.flatMap((speed) =>
    speed.verdict === 'outside'
      ? [
          `${FEATURE_LABELS[speed.feature]}: ${display(speed.value, 'rpm')} is outside ${speedBandWords(speed)}`,
        ]
      : [],
  );
