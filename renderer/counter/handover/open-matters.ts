import type { BenchSheet } from '../../../shared/contract/bench/index.ts';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import type { Account } from '../../../shared/contract/till/index.ts';
import { JOB_STATE_LABELS } from '../../../shared/work/counter/job-state.ts';

/** One thing that has to be settled before a machine goes out. */
export interface Matter {
  key: 'state' | 'hold-points' | 'readings' | 'invoice' | 'due';
  settled: boolean;
  says: string;
  /** Single things that are open, by name. */
  open: readonly string[];
  /** Where it is settled, below the job's own address. */
  page: 'bench' | 'till';
}

interface FeatureReadings {
  label: string;
  places: readonly {
    label: string;
    readings: readonly Pick<
      BenchSheet['features'][number]['places'][number]['readings'][number],
      'phase' | 'verdict' | 'superseded'
    >[];
  }[];
}

type Bill = NonNullable<Account['invoice']>;
type Billed = Pick<Bill, 'number'> & Partial<Pick<Bill, 'dueOn'>>;

/** What has to be paid or explained before the machine goes out; on account it may go out unpaid. */
export const owedNow = ({ invoice, due }: Known['account']): number =>
  typeof invoice?.dueOn === 'string' ? Math.min(0, due) : due;

interface Known {
  job: Pick<JobDossier, 'state'>;
  sheet: {
    holdPoints: readonly Pick<BenchSheet['holdPoints'][number], 'label' | 'state'>[];
    features: readonly FeatureReadings[];
  };
  account: { invoice: Billed | null; due: number };
  money: (minor: number) => string;
}

/**
 * What stands between a machine and its owner. A job that was stopped goes home unbuilt: it needs no hold
 * points and no invoice, but what is billed is paid.
 */
export function openMatters({ job, sheet, account, money }: Known): Matter[] {
  const due = dueMatter(account, money);
  if (job.state === 'stopped')
    return [
      { key: 'state', settled: true, says: 'The job was stopped.', open: [], page: 'bench' },
      due,
    ];
  const open = sheet.holdPoints.filter(({ state }) => state === 'open').map(({ label }) => label);
  return [
    {
      key: 'state',
      settled: job.state === 'ready',
      says:
        job.state === 'ready'
          ? 'It is ready to collect.'
          : `It is not marked ready yet: it stands at “${JOB_STATE_LABELS[job.state]}”.`,
      open: [],
      page: 'bench',
    },
    {
      key: 'hold-points',
      settled: open.length === 0,
      says:
        open.length === 0
          ? 'Every hold point is passed, or overridden in writing.'
          : `${open.length === 1 ? 'One hold point is' : `${open.length} hold points are`} open.`,
      open,
      page: 'bench',
    },
    ...readingsMatter(sheet.features),
    {
      key: 'invoice',
      settled: account.invoice !== null,
      says:
        account.invoice === null
          ? 'There is no invoice yet.'
          : `Invoice ${account.invoice.number} is issued.`,
      open: [],
      page: 'till',
    },
    due,
  ];
}

/**
 * Final readings outside their limits. They keep nothing from going out: whoever signs for it sees them here
 * first, and not on the paper.
 */
function readingsMatter(features: Known['sheet']['features']): Matter[] {
  const outside = features.flatMap(({ label, places }) =>
    places
      .filter(({ readings }) => {
        const last = readings.findLast(({ phase, superseded }) => phase === 'final' && !superseded);
        return last?.verdict === 'outside';
      })
      .map((place) => (place.label === '' ? label : `${label}, ${place.label}`)),
  );
  if (outside.length === 0) return [];
  return [
    {
      key: 'readings',
      settled: false,
      says: `${outside.length === 1 ? 'One final reading is' : `${outside.length} final readings are`} outside the limits, and will be printed so.`,
      open: outside,
      page: 'bench',
    },
  ];
}

function dueMatter(account: Known['account'], money: Known['money']): Matter {
  const { due } = account;
  const says =
    owedNow(account) > 0
      ? `${money(due)} is due: take the payment, or write below why it goes out owing.`
      : due > 0
        ? `${money(due)} is paid later, on account.`
        : due < 0
          ? `Nothing is due; the shop owes ${money(-due)}.`
          : 'Nothing is due.';
  return { key: 'due', settled: owedNow(account) <= 0, says, open: [], page: 'till' };
}
