import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import type { Signature } from '../../../shared/contract/fields.ts';
import { INTAKE_CAUTIONS, TAG_CAUTIONS } from '../../../shared/work/cautions.ts';
import { typedNameWords } from '../../../shared/work/typed-name.ts';
import { REACH_BY_LABELS, SYMPTOM_LABELS } from '../../../shared/work/vocabulary.ts';
import type { ApprovalLine, ClaimTicket, Tag, TakenIn } from '../../paper/content.ts';
import type { Writing } from '../writing.ts';
import { onPaper, paperHead, paperNumber, termLines } from './head.ts';

export const takenIn = (job: JobDossier): TakenIn => ({
  complaint: job.complaint,
  symptoms: job.symptoms.map((symptom) => SYMPTOM_LABELS[symptom]),
  condition: job.condition,
  leftWith: job.leftWith,
  fuel: job.fuel,
  lastService: job.lastService,
});

const claimNumber = (job: JobDossier): string => paperNumber('C', job.number);

/** The spending limit that was agreed at intake, as the first of a job's approvals; none without one. */
export function intakeApproval(job: JobDossier): ApprovalLine[] {
  const { spendingLimit, takenInBy, intakeSigned } = job;
  if (spendingLimit === null) return [];
  const { name, typedBy, at } = intakeSigned;
  return [
    {
      by: name,
      how: typedBy === null ? 'Signed at intake' : `At intake: ${typedNameWords(typedBy)}`,
      at,
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
  signature: signature && onPaper(signature, writing),
});

/** What is wired to the machine. */
export const tag = (writing: Writing, job: JobDossier): Tag => ({
  kind: 'tag',
  ...paperHead(writing, job, paperNumber('T', job.number)),
  complaint: job.complaint,
  leftWith: job.leftWith,
  cautions: TAG_CAUTIONS,
  ...(job.doNotRun !== '' && { doNotRun: job.doNotRun }),
});
