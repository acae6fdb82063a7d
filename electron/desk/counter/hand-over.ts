import { eq } from 'drizzle-orm';
import { nextNumber } from '../../../db/numbers.ts';
import { readingsOf } from '../../../db/queries/bench.ts';
import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { specificationsById } from '../../../db/queries/specbook.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { job as jobTable } from '../../../db/schema/index.ts';
import type { BenchSheet } from '../../../shared/contract/bench/index.ts';
import { Totals } from '../../../shared/contract/till/index.ts';
import { durationWords, gaugesInWords } from '../../../shared/work/bench/step-record.ts';
import { workInWords } from '../../../shared/work/bench/work/kinds-of-work.ts';
import { stillOpen } from '../../../shared/work/counter/handover-matters.ts';
import type { HoldPointLine } from '../../paper/content.ts';
import { stepsOfJob } from '../bench/job-steps.ts';
import { sheetOf } from '../bench/sheet.ts';
import { os } from '../implementer.ts';
import { decisionLines } from '../papers/decisions.ts';
import { findingLines } from '../papers/findings.ts';
import { onPaper, paperHead, paperNumber, signed } from '../papers/head.ts';
import { intakeApproval, takenIn } from '../papers/intake.ts';
import { issue } from '../papers/issue.ts';
import { approvalLines, paperLines, paperTotals } from '../papers/money.ts';
import { photoLines } from '../papers/photos.ts';
import { featureReadings } from '../papers/readings.ts';
import { settlementLines } from '../papers/settlement.ts';
import { lastTestRun } from '../papers/test-run.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';
import { keepPassedOver, mattersOf } from './handover-matters.ts';
import { leavingWords } from './leaving.ts';
import { moveTo } from './move.ts';

const NO_BILL = {
  lines: [],
  totals: Totals.parse({ subtotal: 0, taxes: [], total: 0 }),
};

const holdPointLines = ({ holdPoints }: BenchSheet): HoldPointLine[] =>
  holdPoints.map((point) => ({
    label: point.label,
    outcome: point.state,
    detail: point.detail,
    by: point.by,
    at: point.at ?? '',
    reason: point.reason,
    order: point.order,
    after: point.seconds === null ? '' : durationWords(point.seconds),
    doneBefore: point.doneBefore,
    openedAgain: point.openedAgain?.by ?? '',
    gauges: gaugesInWords(point),
  }));

export const handOver = os.counter.handOver.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, shop, at, note } = writing;
    const { jobId, workDone, oldParts, nextServiceOn, owingReason } = input;
    const job = found(dossierOf(store, jobId), 'job');
    if (job.state === 'handed-over')
      throw errors.MOVE_REFUSED({ data: { from: job.state, to: 'handed-over' } });
    const rebuilt = job.state !== 'stopped';
    const account = found(accountOf(store, jobId), 'job');
    const { invoice, approvals, due } = account;
    const dueOn = invoice?.dueOn ?? null;
    const sheet = sheetOf(store, jobId);
    const matters = mattersOf(writing, { job, account, sheet });
    const open = stillOpen(matters, {
      explained: new Set(input.passedOver.map(({ matter }) => matter)),
      owing: owingReason !== '',
    });
    if (open.length > 0) throw errors.NOT_SETTLED({ data: { open } });

    const passedOver = keepPassedOver(writing, jobId, { matters, reasons: input.passedOver });
    store.update(jobTable).set({ workDone }).where(eq(jobTable.id, jobId)).run();
    moveTo(writing, jobId, 'handed-over', owingReason);
    const heldAgainst = readingsOf(store, jobId).flatMap(({ specificationId }) =>
      specificationId === null ? [] : [specificationId],
    );
    const bill = invoice ?? NO_BILL;
    const { advice, cautions, doNotRun } = leavingWords(store, job);
    const workKind = workInWords(stepsOfJob(store, job));
    const number = paperNumber('W', nextNumber(store, 'work-order'));
    const workOrder = issue(writing, jobId, {
      kind: 'work-order',
      ...(doNotRun !== '' && { doNotRun }),
      ...(rebuilt && workKind !== '' && { workKind }),
      ...paperHead(writing, job, number),
      ...takenIn(job),
      findings: findingLines(store, jobId),
      workDone,
      engineModel: sheet.engineModel ? `${sheet.engineModel.make} ${sheet.engineModel.model}` : '',
      decisions: decisionLines(store, jobId, { ...shop, cylinders: sheet.cylinders }),
      features: featureReadings(sheet, specificationsById(store, heldAgainst), shop),
      holdPoints: rebuilt ? holdPointLines(sheet) : [],
      testRun: lastTestRun(store, jobId),
      photos: photoLines(store, job),
      lines: paperLines(bill.lines, shop),
      totals: paperTotals(bill.totals, shop),
      approvals: [...intakeApproval(job), ...approvalLines(approvals)],
      payments: settlementLines(account, at),
      due,
      dueOn,
      invoiceNumber: invoice?.number ?? '',
      passedOver,
      oldParts,
      warranty: shop.warranty,
      advice,
      nextServiceOn,
      cautions,
      customerSignature: onPaper(signed(input.customerSignature, at), writing),
      shopSignature: onPaper(signed(input.shopSignature, at), writing),
    });
    note({
      job: jobId,
      workOrder: number,
      fingerprint: workOrder.fingerprint,
      due,
      ...(passedOver.length > 0 && { passedOver: passedOver.map(({ says }) => says).join(' ') }),
    });
    return { job: found(dossierOf(store, jobId), 'job'), workOrder };
  }),
);
