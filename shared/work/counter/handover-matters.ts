import { JOB_STATE_LABELS, type JobState } from './job-state.ts';

/** What has to be settled, or passed over in writing, before a machine goes out. */

/** What may be passed over, with a reason that is printed on the work order. */
export const PASSABLE_MATTERS = [
  'readings-missing',
  'readings-outside',
  'speeds',
  'parts-billed',
  'parts-issued',
  'unpriced',
] as const;
export type PassableMatter = (typeof PASSABLE_MATTERS)[number];

export const HANDOVER_MATTERS = [
  'state',
  'hold-points',
  'overrides',
  ...PASSABLE_MATTERS,
  'invoice',
  'due',
] as const;
export type MatterKey = (typeof HANDOVER_MATTERS)[number];

/**
 * How it stands: settled; to be noted (it keeps nothing from going out); to be settled or passed over with a
 * reason; or to be settled without a way around.
 */
export const MATTER_STANDINGS = ['settled', 'noted', 'to-explain', 'to-settle'] as const;
export type MatterStanding = (typeof MATTER_STANDINGS)[number];

export interface HandoverMatter {
  key: MatterKey;
  standing: MatterStanding;
  /** A sentence. */
  says: string;
  /** Single things that it is about, by name. */
  items: string[];
}

export interface HandoverFacts {
  state: JobState;
  holdPoints: readonly { label: string; state: 'open' | 'passed' | 'overridden'; reason: string }[];
  /** Final readings that are owed and not taken, and those outside their limits, each by its place. */
  readingsMissing: readonly string[];
  readingsOutside: readonly string[];
  /** Speeds that the spec book knows and the last test run has not. */
  speedsMissing: readonly string[];
  /** Parts with their quantity: billed and not issued, issued and not billed. */
  billedNotIssued: readonly string[];
  issuedNotBilled: readonly string[];
  /** Lines of the bill, and work decided on, without a price. */
  unpriced: readonly string[];
  /** Number of the bill that stands; null while there is none. */
  invoice: string | null;
  /** What is to be paid, minor units; below zero the shop owes. */
  due: number;
  /** The customer pays later, on account. */
  onAccount: boolean;
  money: (minor: number) => string;
}

/**
 * What stands between a machine and its owner, in the order in which it is settled. A job that was stopped goes
 * home unbuilt: it needs no hold points and no invoice, but its parts and its money are settled.
 */
export function handoverMatters(facts: HandoverFacts): HandoverMatter[] {
  if (facts.state === 'stopped')
    return [
      { key: 'state', standing: 'settled', says: 'The job was stopped.', items: [] },
      ...partsMatters(facts),
      dueMatter(facts),
    ];
  return [
    stateMatter(facts.state),
    ...holdPointMatters(facts.holdPoints),
    ...toExplain('readings-missing', facts.readingsMissing, {
      one: 'One final reading is missing.',
      many: (count) => `${count} final readings are missing.`,
    }),
    ...toExplain('readings-outside', facts.readingsOutside, {
      one: 'One final reading is outside the limits, and will be printed so.',
      many: (count) => `${count} final readings are outside the limits, and will be printed so.`,
    }),
    ...toExplain('speeds', facts.speedsMissing, {
      one: 'One speed was not measured at the test run.',
      many: (count) => `${count} speeds were not measured at the test run.`,
    }),
    ...partsMatters(facts),
    ...toExplain('unpriced', facts.unpriced, {
      one: 'One line has no price.',
      many: (count) => `${count} lines have no price.`,
    }),
    {
      key: 'invoice',
      standing: facts.invoice === null ? 'to-settle' : 'settled',
      says:
        facts.invoice === null ? 'There is no invoice yet.' : `Invoice ${facts.invoice} is issued.`,
      items: [],
    },
    dueMatter(facts),
  ];
}

const stateMatter = (state: JobState): HandoverMatter =>
  state === 'ready'
    ? { key: 'state', standing: 'settled', says: 'It is ready to collect.', items: [] }
    : {
        key: 'state',
        standing: 'to-settle',
        says: `It is not marked ready yet: it stands at “${JOB_STATE_LABELS[state]}”.`,
        items: [],
      };

function holdPointMatters(points: HandoverFacts['holdPoints']): HandoverMatter[] {
  const open = points.filter(({ state }) => state === 'open').map(({ label }) => label);
  const overridden = points.filter(({ state }) => state === 'overridden');
  const matters: HandoverMatter[] = [
    {
      key: 'hold-points',
      standing: open.length === 0 ? 'settled' : 'to-settle',
      says:
        open.length > 0
          ? `${open.length === 1 ? 'One hold point is' : `${open.length} hold points are`} open.`
          : overridden.length === 0
            ? 'Every hold point is passed.'
            : 'No hold point is open.',
      items: open,
    },
  ];
  if (overridden.length > 0)
    matters.push({
      key: 'overrides',
      standing: 'noted',
      says: `${overridden.length === 1 ? 'One hold point was' : `${overridden.length} hold points were`} overridden in writing, and will be printed so.`,
      items: overridden.map(({ label, reason }) => `${label}: ${reason}`),
    });
  return matters;
}

const partsMatters = ({ billedNotIssued, issuedNotBilled }: HandoverFacts): HandoverMatter[] => [
  ...toExplain('parts-billed', billedNotIssued, {
    one: 'One part is billed and not issued.',
    many: (count) => `${count} parts are billed and not issued.`,
  }),
  ...toExplain('parts-issued', issuedNotBilled, {
    one: 'One part was issued to the job and is not billed.',
    many: (count) => `${count} parts were issued to the job and are not billed.`,
  }),
];

/** Something that may be passed over with a reason; nothing where there is nothing of it. */
function toExplain(
  key: PassableMatter,
  items: readonly string[],
  { one, many }: { one: string; many: (count: number) => string },
): HandoverMatter[] {
  if (items.length === 0) return [];
  const says = items.length === 1 ? one : many(items.length);
  return [{ key, standing: 'to-explain', says, items: [...items] }];
}

function dueMatter({ due, onAccount, money }: HandoverFacts): HandoverMatter {
  const owed = due > 0 && !onAccount;
  const says = owed
    ? `${money(due)} is due: take the payment, or write below why it goes out owing.`
    : due > 0
      ? `${money(due)} is paid later, on account.`
      : due < 0
        ? `Nothing is due; the shop owes ${money(-due)}.`
        : 'Nothing is due.';
  return { key: 'due', standing: owed ? 'to-settle' : 'settled', says, items: [] };
}

/** What keeps a machine from going out, of what is neither settled nor explained. */
export const stillOpen = (
  matters: readonly HandoverMatter[],
  { explained, owing }: { explained: ReadonlySet<string>; owing: boolean },
): HandoverMatter[] =>
  matters.filter(
    ({ key, standing }) =>
      (standing === 'to-settle' && !(key === 'due' && owing)) ||
      (standing === 'to-explain' && !explained.has(key)),
  );
