import { intakeSignatureOf } from '../../../db/queries/counter/jobs.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import { INTAKE_CAUTIONS, TAG_CAUTIONS } from '../../../shared/work/cautions.ts';
import { REACH_BY_LABELS, SYMPTOM_LABELS } from '../../../shared/work/vocabulary.ts';
import type { ApprovalLine, ClaimTicket, Signature, Tag, TakenIn } from '../../paper/content.ts';
import type { Writing } from '../writing.ts';
import { paperHead, paperNumber, termLines } from './head.ts';

export const takenIn = (job: JobDossier): TakenIn => ({
  complaint: job.complaint,
  symptoms: job.symptoms.map((symptom) => SYMPTOM_LABELS[symptom]),
  condition: job.condition,
  leftWith: job.leftWith,
  fuel: job.fuel,
  lastService: job.lastService,
});

const claimNumber = (job: JobDossier): string => paperNumber('C', job.number);

/** The spending limit that was signed at intake, as the first of a job's approvals; none without one. */
export function intakeApproval(store: ReadStore, job: JobDossier): ApprovalLine[] {
  const { spendingLimit, takenInBy } = job;
  if (spendingLimit === null) return [];
  const { name, signedAt } = intakeSignatureOf(store, job.id);
  return [
    {
      by: name,
      how: 'Signed at intake',
      at: signedAt,
      takenBy: takenInBy,
      amount: spendingLimit,
      paperNumber: claimNumber(job),
      note: '',
    },
  ];
}

/** What the customer signs at the counter and takes home. */
export const claimTicket = (
  writing: Writing,
  job: JobDossier,
  signature: Signature | null,
): ClaimTicket => ({
  kind: 'claim-ticket',
  ...paperHead(writing, job, claimNumber(job)),
  ...takenIn(job),
  reachBy: REACH_BY_LABELS[job.reachBy],
  diagnosisFee: job.diagnosisFee,
  spendingLimit: job.spendingLimit,
  deposit: job.depositAgreed,
  terms: termLines(writing.shop.claimTerms),
  cautions: INTAKE_CAUTIONS,
  signature,
});

/** What is wired to the machine. */
export const tag = (writing: Writing, job: JobDossier): Tag => ({
  kind: 'tag',
  ...paperHead(writing, job, paperNumber('T', job.number)),
  complaint: job.complaint,
  leftWith: job.leftWith,
  cautions: TAG_CAUTIONS,
});
