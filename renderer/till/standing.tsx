import { Paper } from '@mantine/core';
import type { Account } from '../../shared/contract/till/index.ts';
import { atLeast } from '../../shared/work/till/at-least.ts';
import { useMoney } from '../common/shop.tsx';
import { BillBar } from './approval/bill-bar.tsx';
import type { EstimateDraft } from './estimate/use-estimate-draft.ts';
import { useBillAhead } from './limit/use-bill-ahead.ts';
import classes from './standing.module.css';

/** How the money of the job stands, in four figures and a bar. */
export function Standing({ account, draft }: { account: Account; draft: EstimateDraft }) {
  const money = useMoney();
  const { invoice, approvedLimit, paid, due } = account;
  const latest = account.estimates.at(-1);
  const ahead = useBillAhead(account.jobId);
  const bill = currentBill();
  return (
    <Paper
      component="section"
      withBorder
      p="md"
      bg="var(--tappet-surface)"
      aria-label="How the money stands"
    >
      <dl className={classes.figures}>
        <Figure label={bill.label} value={atLeast(money(bill.total), bill.unpriced)} />
        <Figure label="Approved up to" value={money(approvedLimit)} />
        <Figure label={invoice === null ? 'Deposit held' : 'Paid'} value={money(paid)} />
        <Figure label={dueLabel()} value={toPayInWords()} large />
      </dl>
      <BillBar total={bill.total} limit={approvedLimit} unpriced={bill.unpriced} />
    </Paper>
  );

  function currentBill(): { label: string; total: number; unpriced: number } {
    if (invoice !== null)
      return { label: `Invoice ${invoice.number}`, total: invoice.totals.total, unpriced: 0 };
    if (!draft.changed && ahead !== undefined && ahead.beyond.length > 0)
      return { label: 'Heading to', total: ahead.total, unpriced: ahead.unpriced.length };
    if (latest !== undefined && !draft.changed) {
      const option = ahead?.estimate?.option ?? '';
      return {
        label: `Estimate, revision ${latest.revision}${option === '' ? '' : `, ${option}`}`,
        total: ahead?.estimate?.total ?? latest.totals.total,
        unpriced: 0,
      };
    }
    return {
      label: 'Lines as typed',
      total: draft.totals.total,
      unpriced: draft.unpriced + draft.uncounted,
    };
  }

  /** Before there is an invoice nothing is due: then it is what would be left after the deposit. */
  function toPay(): number {
    return invoice === null ? bill.total - paid : due;
  }

  function toPayInWords(): string {
    return toPay() < 0
      ? money(-toPay())
      : atLeast(money(toPay()), invoice === null ? bill.unpriced : 0);
  }

  function dueLabel(): string {
    if (toPay() < 0) return 'Owed to the customer';
    return invoice === null ? 'Would be left to pay' : 'To pay';
  }
}

function Figure({ label, value, large }: { label: string; value: string; large?: boolean }) {
  return (
    <div className={classes.figure} data-large={large}>
      <dt>{label}</dt>
      <dd>{value}</dd>
    </div>
  );
}
