import { jobRowById } from '../../../../db/queries/counter/jobs.ts';
import { standingDecisions } from '../../../../db/queries/decisions.ts';
import { shopOf } from '../../../../db/queries/office.ts';
import { partById } from '../../../../db/queries/parts/part.ts';
import { usedParts } from '../../../../db/queries/parts/used-parts.ts';
import { accountOf } from '../../../../db/queries/till/account.ts';
import { clockedOn } from '../../../../db/queries/till/clock.ts';
import { tillRulesOf } from '../../../../db/queries/till/rules.ts';
import { billTermsOf } from '../../../../db/queries/till/terms.ts';
import type { ReadStore } from '../../../../db/store.ts';
import type { Proposal } from '../../../../shared/contract/bench/index.ts';
import { jobCode } from '../../../../shared/contract/ids.ts';
import type { Part } from '../../../../shared/contract/parts/index.ts';
import type { Account, BillAhead, LineInput } from '../../../../shared/contract/till/index.ts';
import { dateIn } from '../../../../shared/work/calendar.ts';
import { coreChargeWords } from '../../../../shared/work/parts/cores.ts';
import { overApproval } from '../../../../shared/work/till/approval.ts';
import {
  beyondEstimate,
  type SinceEstimate,
  waitsForApproval,
} from '../../../../shared/work/till/bill-ahead.ts';
import { hoursOf, spanLasted } from '../../../../shared/work/till/clock.ts';
import { labourLines, type WorkedTime } from '../../../../shared/work/till/clock-lines.ts';
import { workToBill } from '../../../../shared/work/till/work-to-bill.ts';
import { foundLines, proposedLines } from '../../bench/proposals.ts';
import { found } from '../../refuse.ts';
import { billOf } from '../bill.ts';

/** A part that is about to go to the job, thousandths. */
export interface AboutToIssue {
  part: Part;
  quantity: number;
}

/** What a job's bill is heading to, with a part that is about to be issued if there is one. */
export function billAheadOf(
  store: ReadStore,
  jobId: string,
  now: Date,
  more: AboutToIssue | null = null,
): BillAhead {
  const account = found(accountOf(store, jobId), 'job');
  const shop = shopOf(store);
  const { invoice, approvedAmount: approved, approvedLimit: limit, spendingLimit } = account;
  const work = workToBill(account);
  const all = sinceEstimate(store, account, now, more);
  const since = invoice === null ? all : NOTHING;
  const estimated: readonly LineInput[] = work?.lines ?? [];
  const beyond = beyondEstimate(estimated, since);
  // What was decided on after the estimate may have been left out of the invoice: then nobody has priced it.
  const open =
    invoice === null
      ? beyond
      : beyondEstimate<LineInput>(invoice.lines, { ...NOTHING, decided: all.decided });
  const lines = [...estimated, ...beyond.map(({ line }) => line)];
  const terms = billTermsOf(store, shop, jobId, dateIn(shop.timeZone, now));
  const bill =
    lines.length === 0
      ? null
      : billOf(store, terms, { lines, discount: work?.option.discount ?? null });
  const estimatedBill =
    beyond.length === 0 || work === null
      ? bill
      : billOf(store, terms, { lines: estimated, discount: work.option.discount });
  const estimatedTotal = estimatedBill?.totals.total ?? 0;
  const total = invoice?.totals.total ?? bill?.totals.total ?? 0;
  // What was found is a proposal: it is told, and stops no work before somebody decides on it.
  const agreed = beyond.filter(({ because }) => because !== 'found');
  const heading =
    agreed.length === beyond.length || bill === null
      ? total
      : billOf(store, terms, {
          lines: [...estimated, ...agreed.map(({ line }) => line)],
          discount: work?.option.discount ?? null,
        }).totals.total;
  const asked = work !== null || spendingLimit !== null || since.decided.length > 0;
  return {
    jobId: account.jobId,
    jobCode: jobCode(found(jobRowById(store, jobId), 'job').number),
    total,
    unpriced: open.filter(({ priceToSet }) => priceToSet).map(({ line }) => line.description),
    approved,
    limit,
    over: overApproval(total, limit),
    stopped: waitsForApproval({ total: heading, limit, asked, billed: invoice !== null }),
    estimate: work && {
      number: work.estimate.number,
      option: work.option.label,
      total: estimatedTotal,
      approved: work.approval !== null,
    },
    beyond: beyond.flatMap(({ line: _asked, ...why }, index) => {
      const line = bill?.lines[estimated.length + index];
      return line === undefined ? [] : [{ ...why, line }];
    }),
  };
}

const NOTHING: SinceEstimate<LineInput> = {
  found: [],
  decided: [],
  issued: [],
  clocked: 0,
  hours: [],
  coreOf: () => null,
};

const bare = {
  partId: null,
  note: '',
  unitCost: null,
  priceFrom: 'typed',
  workKind: '',
  discount: null,
} satisfies Partial<LineInput>;

function sinceEstimate(
  store: ReadStore,
  { jobId, estimates }: Account,
  now: Date,
  more: AboutToIssue | null,
): SinceEstimate<LineInput> {
  const written = estimates.at(-1)?.writtenAt ?? '';
  // Advice behind decisions reads the whole sheet: it is asked only where something was decided.
  const decidedSince = standingDecisions(store, jobId).some(({ at }) => at > written);
  const times = clockedTimes(store, jobId, now);
  const { rounding, labourRate } = shopOf(store);
  // An estimate says what the work costs, and an agreed fee what the diagnosis does: hours are then not it.
  const byTheHour = estimates.length === 0 && !found(jobRowById(store, jobId), 'job').diagnosisFee;
  const toPrice = ({ priceToSet, partNumber: _number, note: _note, ...line }: Proposal) => ({
    line: { ...bare, ...line },
    priceToSet,
  });
  return {
    found: foundLines(store, jobId, written).map(toPrice),
    decided: decidedSince ? proposedLines(store, jobId, written).lines.map(toPrice) : [],
    issued: issuedWith(usedParts(store, jobId), more).map(partLine),
    clocked: hoursOf(
      times.reduce((sum, { minutes }) => sum + minutes, 0),
      rounding,
    ),
    hours: byTheHour ? labourLines(times, { ...tillRulesOf(store), labourRate, rounding }) : [],
    coreOf: (line) => coreLine(store, line),
  };
}

/** Parts of the job, and one more. */
function issuedWith(issued: readonly AboutToIssue[], more: AboutToIssue | null): AboutToIssue[] {
  if (more === null) return [...issued];
  const before = issued.find(({ part }) => part.id === more.part.id);
  return [
    ...issued.filter((each) => each !== before),
    { part: more.part, quantity: more.quantity + (before?.quantity ?? 0) },
  ];
}

const partLine = ({ part, quantity }: AboutToIssue): LineInput => ({
  ...bare,
  kind: 'part',
  description: part.description,
  partId: part.id,
  quantity,
  unit: part.unit,
  unitPrice: part.sellsAt,
  priceFrom: part.sellsBy,
});

/** What a part of a line is charged until the old one comes back. */
function coreLine(store: ReadStore, { kind, partId, quantity, unit }: LineInput): LineInput | null {
  const part = kind === 'part' && partId !== null ? partById(store, partId) : undefined;
  if (part === undefined || part.coreCharge === 0) return null;
  return {
    ...bare,
    kind: 'core-charge',
    description: coreChargeWords(part),
    quantity,
    unit,
    unitPrice: part.coreCharge,
  };
}

/** Clocks that run count up to now. */
const clockedTimes = (store: ReadStore, jobId: string, now: Date): WorkedTime[] =>
  clockedOn(store, jobId)
    .filter(({ what }) => what !== 'struck-out')
    .map((row) => ({
      workKind: row.workKind,
      minutes: spanLasted(row, now.toISOString()),
      hourlyCost: 0,
    }));

interface Refusal {
  OVER_APPROVAL: (more: { data: { total: number; limit: number; over: number } }) => Error;
}

/**
 * Lets work on a job go on only as long as its bill stays within what was approved.
 * @throws the declared OVER_APPROVAL when it doesn't
 */
export function demandApproval(
  { store, at }: { store: ReadStore; at: string },
  jobId: string,
  errors: Refusal,
  more: AboutToIssue | null = null,
): void {
  const { stopped, total, limit, over } = billAheadOf(store, jobId, new Date(at), more);
  if (stopped) throw errors.OVER_APPROVAL({ data: { total, limit, over } });
}
