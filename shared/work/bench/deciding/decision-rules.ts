import type { Cycle } from '../../vocabulary.ts';
import {
  DECISION_CHOICE_LABELS,
  DECISION_SUBJECT_LABELS,
  type DecisionChoice,
  type DecisionSubject,
} from './decisions.ts';

/** What can be decided on which part, and when a decision has to say why. */

export interface DecisionPart {
  subject: DecisionSubject;
  /** From 1; 0 for what an engine has once. */
  cylinder: number;
}

const PER_CYLINDER: readonly DecisionSubject[] = [
  'cylinder',
  'piston',
  'rings',
  'connecting-rod',
  'valves',
  'valve-springs',
  'valve-guides',
  'valve-seats',
  'head',
];
/** What a two-stroke with ports has none of. */
const VALVE_TRAIN: readonly DecisionSubject[] = [
  'valves',
  'valve-springs',
  'valve-guides',
  'valve-seats',
];
const ONCE: readonly DecisionSubject[] = ['crankshaft', 'coil', 'engine'];

/** Every part of an engine that is decided on: cylinder by cylinder, then what there is once. */
export function decisionPartsOf({
  cycle,
  cylinders,
}: {
  cycle: Cycle;
  cylinders: number;
}): DecisionPart[] {
  const each = PER_CYLINDER.filter(
    (subject) => cycle === 'four-stroke' || !VALVE_TRAIN.includes(subject),
  );
  return [
    ...Array.from({ length: cylinders }, (_, index) => index + 1).flatMap((cylinder) =>
      each.map((subject) => ({ subject, cylinder })),
    ),
    ...ONCE.map((subject) => ({ subject, cylinder: 0 })),
  ];
}

const CHOICES: Record<DecisionSubject, readonly DecisionChoice[]> = {
  cylinder: ['reuse', 'hone', 'next-oversize', 'replace', 'stop'],
  piston: ['reuse', 'next-oversize', 'replace'],
  rings: ['reuse', 'file', 'next-oversize', 'replace'],
  crankshaft: ['reuse', 'undersize', 'replace', 'stop'],
  'connecting-rod': ['reuse', 'undersize', 'replace'],
  valves: ['reuse', 'reface', 'replace'],
  'valve-springs': ['reuse', 'replace'],
  'valve-guides': ['reuse', 'ream', 'replace'],
  'valve-seats': ['reuse', 'lap', 'cut', 'replace'],
  head: ['reuse', 'resurface', 'replace', 'stop'],
  coil: ['reuse', 'replace'],
  engine: ['reuse', 'replace', 'stop'],
};

/** What can become of a part. */
export const choicesFor = (subject: DecisionSubject): readonly DecisionChoice[] => CHOICES[subject];

const OWN_WORDS: Partial<Record<DecisionSubject, Partial<Record<DecisionChoice, string>>>> = {
  engine: { reuse: 'Go on with it', replace: 'Exchange engine' },
  cylinder: { replace: 'New sleeve or cylinder' },
  piston: { 'next-oversize': 'Oversize piston' },
  rings: { 'next-oversize': 'Oversize rings', replace: 'New rings', file: 'File to the gap' },
  crankshaft: { undersize: 'Grind undersize' },
  'connecting-rod': { undersize: 'Undersize rod' },
  // What stood for both before seats were decided on by themselves; older jobs have it.
  valves: { resurface: 'Reface and cut seats', replace: 'New valves' },
  'valve-springs': { replace: 'New springs' },
  'valve-guides': { ream: 'Ream for oversize stem', replace: 'New guides' },
  'valve-seats': { lap: 'Lap', cut: 'Cut and narrow', replace: 'New seats' },
  head: { resurface: 'Surface flat' },
};

/** A choice as it is said of that part. */
export const choiceLabel = (subject: DecisionSubject, choice: DecisionChoice): string =>
  OWN_WORDS[subject]?.[choice] ?? DECISION_CHOICE_LABELS[choice];

/** 'Piston, cylinder 2'; the cylinder only where an engine has several. */
export const partLabel = ({ subject, cylinder }: DecisionPart, cylinders: number): string =>
  cylinder > 0 && cylinders > 1
    ? `${DECISION_SUBJECT_LABELS[subject]}, cylinder ${cylinder}`
    : DECISION_SUBJECT_LABELS[subject];

/** Choices that go up or down from the nominal size by a step. */
export const takesStep = (choice: DecisionChoice): boolean =>
  choice === 'next-oversize' || choice === 'undersize';

/** Whether the choice sends the part itself to the machine shop, to be brought to a size. */
export const isMachined = (subject: DecisionSubject, choice: DecisionChoice): boolean =>
  takesStep(choice) && (subject === 'cylinder' || subject === 'crankshaft');

/** What the figures come to for one part. Nothing is decided by it. */
export interface Advice {
  /** Null where the figures settle nothing. */
  choice: DecisionChoice | null;
  /** Over or under the nominal size, mm, more than zero; null for choices without a step. */
  step: number | null;
  /** Why, in sentences with the figures. */
  reason: string;
  /** Figures that speak, figures in doubt, or none. */
  grounds: 'figures' | 'doubt' | 'none';
}

/**
 * Why a decision has to say its reason in writing: it stops the work, goes against what the figures come
 * to, or is made while a figure is too close to call; null when it needs none.
 */
export function whyReasonIsWanted(
  decision: { choice: DecisionChoice; step: number | null },
  advice: Advice,
): 'stop' | 'against-advice' | 'doubt' | null {
  if (decision.choice === 'stop') return advice.choice === 'stop' ? null : 'stop';
  if (advice.choice !== null) {
    const same =
      decision.choice === advice.choice &&
      (advice.step === null || decision.step === null || decision.step === advice.step);
    return same ? null : 'against-advice';
  }
  return advice.grounds === 'doubt' ? 'doubt' : null;
}
