import type { WorkArea } from '../../../shared/work/bench/work/kinds-of-work.ts';
import type { JobState } from '../../../shared/work/counter/job-state.ts';
import type { MeasuredFeature } from '../../../shared/work/features.ts';
import type { ApprovalWay, PaymentMethod, Symptom } from '../../../shared/work/vocabulary.ts';
import type { MachineKey } from '../machines.ts';
import type { PartNumber } from '../parts.ts';
import type { StaffKey } from '../staff.ts';
import { type StoryFinding, wants } from './findings.ts';

/** A job of the invented shop, as somebody there would tell it. Money in minor units. */
export interface JobStory {
  machine: MachineKey;
  /** Days before today. */
  takenIn: number;
  /** Time on the shop's clock. */
  at: string;
  /** Days after intake. */
  promisedIn: number | null;
  /** In the customer's words. */
  complaint: string;
  symptoms: readonly Symptom[];
  condition: string;
  leftWith?: readonly string[];
  fuel: string;
  lastService?: string;
  /** On the engine's meter, if it has one. */
  engineHours?: number;
  diagnosisFee?: number;
  spendingLimit?: number;
  /** Agreed at intake and taken then. */
  deposit?: { amount: number; method: PaymentMethod };
  signs: 'pad' | 'typed';
  /** Where the job stands today. */
  reaches: JobState;
  /** What was found, in short and check by check; its day and those below count from intake. */
  diagnosis?: { day: number; by: StaffKey; found: string; checks?: readonly StoryFinding[] };
  estimate?: StoryEstimate;
  /** What turned up once it was open, put to the customer again. */
  secondEstimate?: StoryEstimate;
  /** A part that was not on the shelf. */
  waits?: { day: number; for: PartNumber; expectedDay: number; arrivesDay?: number };
  bench?: StoryBench;
  stopped?: { day: number; why: string };
  handover?: StoryHandover;
}

export interface StoryEstimate {
  day: number;
  /** What the customer reads, where there is a choice; `lines` are the first of it. */
  label?: string;
  lines: readonly StoryLine[];
  /** Other ways to do it, side by side with the first. */
  besides?: readonly { label: string; lines: readonly StoryLine[] }[];
  note?: string;
  approval?: {
    day: number;
    how: ApprovalWay;
    /** The estimate's total when it isn't said. */
    upTo?: number;
    /** The customer, unless somebody else answered. */
    by?: string;
    /** Places of the lines that were not taken, from 0. */
    declines?: readonly number[];
  };
}

/** What was found, check by check: where a story tells no more than the short of it, that. */
export const checksOf = ({
  found,
  checks,
}: NonNullable<JobStory['diagnosis']>): readonly StoryFinding[] =>
  checks ?? (found === '' ? [] : [wants('other', found)]);

/** How much of an engine is opened: all of it, the top, or nothing. */
export type Scope = 'rebuild' | 'top-end' | 'service';

export interface StoryBench {
  day: number;
  by: StaffKey;
  scope: Scope;
  /** 0: at the edge of the band; 1: at the wear limit; more: past it. */
  wear: number;
  worstCylinder?: number;
  /** Not measured yet of what came in: the strip-down goes on there. */
  stillToMeasure?: readonly MeasuredFeature[];
  /** What a repair touches, where the engine stays closed and it is no plain service. */
  touched?: readonly WorkArea[];
  /** Hold points that were walked past, by their key, each with why. */
  walkedPast?: Readonly<Record<string, string>>;
  /** Share of the readings of the build that are there so far; all of them when it isn't said. */
  soFar?: number;
  /** What was found when it was ready already, and put right. */
  backAgain?: string;
  readyDay?: number;
}

export interface StoryHandover {
  day: number;
  workDone: string;
  oldParts?: string;
  /** Days after handover. */
  nextServiceIn?: number;
  paid?: readonly PaymentMethod[];
  owing?: string;
  /** Taken off the first line of the bill some days later, and given back the way it was paid. */
  credited?: { day: number; amount: number; reason: string };
}

export type StoryLine =
  | { kind: 'labour'; what: string; hours: number }
  | { kind: 'part'; number: PartNumber; count: number }
  | { kind: 'outside' | 'supplies' | 'fee'; what: string; price: number };

export const labour = (what: string, hours: number): StoryLine => ({ kind: 'labour', what, hours });

export const part = (number: PartNumber, count = 1): StoryLine => ({ kind: 'part', number, count });

export const outside = (what: string, price: number): StoryLine => ({
  kind: 'outside',
  what,
  price,
});

export const supplies = (price: number): StoryLine => ({
  kind: 'supplies',
  what: 'Cleaner, assembly oil, rags',
  price,
});

export const fee = (what: string, price: number): StoryLine => ({ kind: 'fee', what, price });
