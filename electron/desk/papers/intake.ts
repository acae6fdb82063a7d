import type { JobDossier } from '../../../shared/contract/counter.ts';
import { INTAKE_CAUTIONS, TAG_CAUTIONS } from '../../../shared/work/cautions.ts';
import { REACH_BY_LABELS, SYMPTOM_LABELS } from '../../../shared/work/vocabulary.ts';
import type { ClaimTicket, Signature, Tag } from '../../paper/content.ts';
import type { Writing } from '../writing.ts';
import { paperHead, paperNumber, termLines } from './head.ts';

/** What the customer signs at the counter and takes home. */
export const claimTicket = (
  writing: Writing,
  job: JobDossier,
  signature: Signature,
): ClaimTicket => ({
  kind: 'claim-ticket',
  ...paperHead(writing, job, paperNumber('C', job.number)),
  complaint: job.complaint,
  symptoms: job.symptoms.map((symptom) => SYMPTOM_LABELS[symptom]),
  condition: job.condition,
  leftWith: job.leftWith,
  fuel: job.fuel,
  lastService: job.lastService,
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
