import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { shopOf } from '../../../db/queries/office.ts';
import { notBilled, notIssued } from '../../../db/queries/parts/billed-parts.ts';
import { testRunsOf } from '../../../db/queries/test-runs.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { handoverMatter } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { BenchSheet } from '../../../shared/contract/bench/index.ts';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import type { Shop } from '../../../shared/contract/office.ts';
import type { Account } from '../../../shared/contract/till/index.ts';
import { formatMoney, formatQuantity } from '../../../shared/money/index.ts';
import { missingWords } from '../../../shared/work/bench/hold-points.ts';
import { FINAL_READINGS_STEP } from '../../../shared/work/bench/owed-readings.ts';
import { speedsNotMeasured } from '../../../shared/work/bench/run-speed.ts';
import {
  type HandoverMatter,
  handoverMatters as mattersFrom,
  type PassableMatter,
} from '../../../shared/work/counter/handover-matters.ts';
import { FEATURE_LABELS } from '../../../shared/work/features.ts';
import { bookOf } from '../bench/book.ts';
import { owedOf } from '../bench/build-state.ts';
import { sheetOf } from '../bench/sheet.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { billAheadOf } from '../till/limit/bill-ahead.ts';
import type { Writing } from '../writing.ts';

interface Known {
  job: JobDossier;
  account: Account;
  sheet: BenchSheet;
}

/** What stands between the machine of a job and its owner. */
export function mattersOf(
  { store, shop, at }: { store: ReadStore; shop: Shop; at: string },
  { job, account, sheet }: Known,
): HandoverMatter[] {
  const { invoice, due } = account;
  const inWords = ({
    part,
    quantity,
  }: {
    part: { number: string; description: string; unit: string };
    quantity: number;
  }) =>
    `${formatQuantity(quantity, shop.locale)} ${part.unit} ${part.number} ${part.description}`.trim();
  return mattersFrom({
    state: job.state,
    holdPoints: sheet.holdPoints,
    readingsMissing: readingsMissing(store, job.id, sheet),
    readingsOutside: outside(sheet),
    speedsMissing: speedsMissing(store, job.id),
    billedNotIssued: notIssued(store, job.id).map(inWords),
    issuedNotBilled: notBilled(store, job.id, { stopped: job.state === 'stopped' }).map(inWords),
    unpriced: billAheadOf(store, job.id, new Date(at)).unpriced,
    invoice: invoice?.number ?? null,
    due,
    onAccount: typeof invoice?.dueOn === 'string',
    money: (minor) => formatMoney(minor, shop.currency, shop.locale),
  });
}

/** Final readings that are owed, unless somebody said in writing why they were not taken. */
const readingsMissing = (store: ReadStore, jobId: string, { holdPoints }: BenchSheet): string[] =>
  holdPoints.some(({ key, state }) => key === FINAL_READINGS_STEP && state === 'overridden')
    ? []
    : owedOf(store, jobId).map(missingWords);

/** Places whose last final reading is outside its limits: whoever signs for them sees them here first. */
const outside = ({ features }: BenchSheet): string[] =>
  features.flatMap(({ label, places }) =>
    places
      .filter(({ readings }) => {
        const last = readings.findLast(({ phase, superseded }) => phase === 'final' && !superseded);
        return last?.verdict === 'outside';
      })
      .map((place) => (place.label === '' ? label : `${label}, ${place.label}`)),
  );

function speedsMissing(store: ReadStore, jobId: string): string[] {
  const known = bookOf(store, jobId).specifications.map(({ feature }) => feature);
  const [run] = testRunsOf(store, jobId);
  return speedsNotMeasured(known, run?.findings ?? null).map((feature) => FEATURE_LABELS[feature]);
}

/** Keeps, of what was explained, what really was not settled; says it as it is printed. */
export function keepPassedOver(
  { store, staff, at, newId }: Writing,
  jobId: string,
  {
    matters,
    reasons,
  }: {
    matters: readonly HandoverMatter[];
    reasons: readonly { matter: PassableMatter; reason: string }[];
  },
): { says: string; items: string[]; reason: string }[] {
  return reasons.flatMap(({ matter, reason }) => {
    const open = matters.find(({ key, standing }) => key === matter && standing === 'to-explain');
    if (open === undefined) return [];
    const { says, items } = open;
    store
      .insert(handoverMatter)
      .values({ id: newId(), jobId, matter, says, items, reason, by: staff.id, at })
      .run();
    return [{ says, items, reason }];
  });
}

export const handoverMatters = os.counter.handoverMatters.handler(
  ({ input: { jobId }, context: { store, now } }) => {
    const job = found(dossierOf(store.read, jobId), 'job');
    const account = found(accountOf(store.read, jobId), 'job');
    const sheet = sheetOf(store.read, jobId);
    const at = now().toISOString();
    return mattersOf({ store: store.read, shop: shopOf(store.read), at }, { job, account, sheet });
  },
);
