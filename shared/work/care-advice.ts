import type { DecisionChoice, DecisionSubject } from './bench/deciding/decisions.ts';
import type { WorkKind } from './bench/work/kinds-of-work.ts';
import type { Cycle } from './vocabulary.ts';

/** What a customer is told to do, by what was done: common practice, no source; the maker's manual comes first. */

export interface CareFacts {
  cycle: Cycle;
  /** Parts of fuel to one of oil; null where the spec book doesn't say. */
  fuelRatio: number | null;
  /** Bore, piston, rings, rod or crankshaft are new or machined. */
  renewed: boolean;
  /** Its bolts were tightened. */
  headOpened: boolean;
  oilFilled: boolean;
}

const FRESH_FUEL =
  'Use fresh fuel, not older than a month, and shut the tap or run it dry before it is stored.';

export function careAdvice(facts: CareFacts): string[] {
  const lines = facts.cycle === 'two-stroke' ? twoStroke(facts) : fourStroke(facts);
  const tight = facts.renewed || facts.headOpened;
  return [
    ...lines,
    ...(tight
      ? [
          'Have the head bolts, the muffler and the mounts checked for tightness after the first hours, engine cold.',
        ]
      : []),
    FRESH_FUEL,
  ];
}

const WARM_UP =
  'Let it warm up for five minutes before the first load; no full load in the first two hours.';

function fourStroke({ renewed, oilFilled }: CareFacts): string[] {
  if (renewed)
    return [
      WARM_UP,
      'Change the oil after the first five hours; that oil is used oil and goes where local rules say.',
    ];
  return oilFilled
    ? [
        'Check the oil before each start; change it after 50 hours or once a season, whichever comes first, or as the manual says.',
      ]
    : ['Check the oil before each start.'];
}

function twoStroke({ renewed, fuelRatio }: CareFacts): string[] {
  const ratio =
    fuelRatio === null ? 'at the ratio that its maker names' : `${fuelRatio}:1, fuel to oil`;
  const mixed = `Its oil is in the fuel: mix fresh fuel ${ratio}, and shake the can. Straight fuel seizes the engine.`;
  return renewed
    ? [mixed, 'For the first three tanks no long full throttle, and none without load.']
    : [mixed];
}

const INSIDE: readonly DecisionSubject[] = [
  'cylinder',
  'piston',
  'rings',
  'connecting-rod',
  'crankshaft',
];
const LEFT_AS_IT_IS: readonly DecisionChoice[] = ['reuse', 'stop'];

/**
 * Whether an engine has to be run in: by what was decided on its bore, piston, rings and bearings; where nobody
 * decided anything, by the kind of work.
 */
export function wantsRunningIn(
  decisions: readonly { subject: DecisionSubject; choice: DecisionChoice }[],
  { work, seems }: { work: WorkKind | null; seems: WorkKind | null },
): boolean {
  const inside = decisions.filter(({ subject }) => INSIDE.includes(subject));
  if (inside.length > 0) return inside.some(({ choice }) => !LEFT_AS_IT_IS.includes(choice));
  return (work ?? seems) === 'rebuild';
}

/**
 * Why nobody may run a machine that leaves: what was said when it was stopped, or what its last test run showed.
 * Empty when it may be run.
 */
export function whyNotToRun(
  said: string,
  lastRun: { passed: boolean; against: readonly string[] } | null,
): string {
  if (said !== '') return said;
  return lastRun === null || lastRun.passed ? '' : lastRun.against.join('; ');
}
