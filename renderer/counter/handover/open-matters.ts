import type { BenchSheet } from '../../../shared/contract/bench/index.ts';
import type { JobDossier } from '../../../shared/contract/counter.ts';
import type { Account } from '../../../shared/contract/till.ts';
import { JOB_STATE_LABELS } from '../../../shared/work/job-state.ts';

/** One thing that has to be settled before a machine goes out. */
export interface Matter {
  key: 'state' | 'hold-points' | 'invoice' | 'due';
  settled: boolean;
  says: string;
  /** Single things that are open, by name. */
  open: readonly string[];
  /** Where it is settled, below the job's own address. */
  page: 'bench' | 'till';
}

interface Known {
  job: Pick<JobDossier, 'state'>;
  sheet: { holdPoints: readonly Pick<BenchSheet['holdPoints'][number], 'label' | 'state'>[] };
  account: { invoice: Pick<NonNullable<Account['invoice']>, 'number'> | null; due: number };
  money: (minor: number) => string;
}

/**
 * What stands between a machine and its owner. A job that was stopped goes home unbuilt: it needs no hold
 * points and no invoice, but what is billed is paid.
 */
export function openMatters({ job, sheet, account, money }: Known): Matter[] {
  const due = dueMatter(account.due, money);
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

function dueMatter(due: number, money: Known['money']): Matter {
  const says =
    due > 0
      ? `${money(due)} is due: take the payment, or write below why it goes out owing.`
      : due < 0
        ? `Nothing is due; the shop owes ${money(-due)}.`
        : 'Nothing is due.';
  return { key: 'due', settled: due <= 0, says, open: [], page: 'till' };
}
