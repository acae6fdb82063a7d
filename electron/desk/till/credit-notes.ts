import { eq } from 'drizzle-orm';
import { nextNumber } from '../../../db/numbers.ts';
import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { creditNoteNumber } from '../../../db/queries/till/invoices.ts';
import {
  creditNote as creditNoteTable,
  invoice as invoiceTable,
} from '../../../db/schema/index.ts';
import type { Invoice } from '../../../shared/contract/till/index.ts';
import { creditedLine, creditTotals } from '../../../shared/money/index.ts';
import { LOCAL_LAW } from '../../../shared/work/cautions.ts';
import { os } from '../implementer.ts';
import { paperHead } from '../papers/head.ts';
import { issue } from '../papers/issue.ts';
import { paperLines, paperTotals } from '../papers/money.ts';
import { markPartsToIssue } from '../parts/parts-to-issue.ts';
import { settleJob } from '../parts/promises.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';
import { settleBills } from './settle-bills.ts';

export const creditInvoice = os.till.creditInvoice.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, shop, staff, at, newId, note } = writing;
    const { invoiceId, reason } = input;
    const { jobId } = found(
      store.select().from(invoiceTable).where(eq(invoiceTable.id, invoiceId)).get(),
      'invoice',
    );
    const account = found(accountOf(store, jobId), 'job');
    const invoice = found(
      account.invoices.find(({ id }) => id === invoiceId),
      'invoice',
    );
    const asked = new Map(
      demandLines(input.lines, invoice).map(({ line, amount, left }) => {
        const of = amount === null ? left : amount * Math.sign(left);
        if (Math.abs(of) > Math.abs(left))
          throw errors.CREDITED_TOO_MUCH({ data: { line, left: Math.abs(left) } });
        return [line, of] as const;
      }),
    );
    const now = invoice.lines.map((_, index) => asked.get(index) ?? 0);
    const totals = {
      ...creditTotals(invoice, invoice.lineCredits, now),
      exemptBy: invoice.totals.exemptBy,
    };
    const whole = invoice.lines.every(
      (line, index) => (invoice.lineCredits[index] ?? 0) + (now[index] ?? 0) === line.amount,
    );
    if (totals.total < 0 && !whole) throw errors.CREDIT_CHARGES({ data: { total: totals.total } });

    const credited = invoice.lines.flatMap((line, index) =>
      asked.has(index) ? [{ index, line: creditedLine(line, now[index] ?? 0) }] : [],
    );
    const lines = credited.map(({ line }) => line);
    const number = nextNumber(store, 'credit-note');
    const readable = creditNoteNumber(number);
    const freed = Math.max(0, totals.total - Math.max(0, invoice.open));
    const paper = issue(writing, jobId, {
      kind: 'credit-note',
      ...paperHead(writing, found(dossierOf(store, jobId), 'job'), readable),
      corrects: { number: invoice.number, fingerprint: invoice.paper.fingerprint },
      lines: paperLines(lines, shop),
      totals: paperTotals(totals, shop),
      offOpen: totals.total - freed,
      freed,
      reason,
      terms: [LOCAL_LAW],
    });
    store
      .insert(creditNoteTable)
      .values({
        id: newId(),
        number,
        jobId,
        invoiceId,
        lines,
        lineIndexes: credited.map(({ index }) => index),
        totals,
        total: totals.total,
        currency: shop.currency,
        reason,
        paperId: paper.id,
        by: staff.id,
        at,
      })
      .run();
    settleBills(writing, jobId);
    // What is billed no more is needed no more.
    settleJob(writing, jobId);
    markPartsToIssue(writing, jobId);
    note({
      job: jobId,
      creditNote: readable,
      invoice: invoice.number,
      total: totals.total,
      reason,
      fingerprint: paper.fingerprint,
    });
    return found(accountOf(store, jobId), 'job');
  }),
);

/** The lines that are to be credited, each with what is left of it. */
function demandLines<Asked extends { line: number }>(
  asked: readonly Asked[],
  { lines, lineCredits, wholeLines }: Invoice,
): (Asked & { left: number })[] {
  return asked.map((each, place) => {
    const path = `lines.${place}.line`;
    const billed = lines[each.line];
    if (billed === undefined)
      throw badInput([
        { path, message: `The invoice has ${lines.length} lines. Name one by its place, from 0.` },
      ]);
    if (asked.findIndex(({ line }) => line === each.line) !== place)
      throw badInput([{ path, message: 'Name a line once.' }]);
    if (wholeLines.includes(each.line))
      throw badInput([{ path, message: 'Nothing is left of this line to credit.' }]);
    return { ...each, left: billed.amount - (lineCredits[each.line] ?? 0) };
  });
}
