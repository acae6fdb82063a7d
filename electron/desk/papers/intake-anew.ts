import { latestPaper } from '../../../db/queries/office.ts';
import type { JobDossier, PaperCard } from '../../../shared/contract/counter/index.ts';
import type { Signature } from '../../../shared/contract/fields.ts';
import type { ClaimTicket, PaperHead, Tag } from '../../paper/content.ts';
import { canonicalJson } from '../../paper/fingerprint.ts';
import type { Writing } from '../writing.ts';
import { claimTicket, tag } from './intake.ts';
import { issue } from './issue.ts';

/** What a claim ticket says, without when, by whom and why it was issued. */
const saidOnTicket = ({
  number: _number,
  issuedAt: _issuedAt,
  issuedBy: _issuedBy,
  shop: _shop,
  corrects: _corrects,
  signature: _signature,
  terms: _terms,
  cautions: _cautions,
  ...said
}: ClaimTicket) => said;

/** What is printed on a tag of the job. */
const saidOnTag = ({ job, customer, machine, complaint, leftWith, doNotRun = '' }: Tag) => ({
  doNotRun,
  promisedFor: job.promisedFor,
  owner: customer.name,
  machine: [machine.kind, machine.make, machine.model, machine.serial],
  complaint,
  leftWith,
});

/** `C-000042` is followed by `C-000042-2`. */
function following<Content extends PaperHead>(
  content: Content,
  { issued, number, fingerprint }: { issued: number; number: string; fingerprint: string },
  reason: string,
): Content {
  return {
    ...content,
    number: `${content.number}-${issued + 1}`,
    corrects: { number, fingerprint, ...(reason === '' ? {} : { reason }) },
  };
}

/**
 * Issues a job's claim ticket anew, naming the one that it corrects; null when it would say the same and
 * nobody signed it.
 */
export function claimTicketAnew(
  writing: Writing,
  job: JobDossier,
  { signature, reason }: { signature: Signature | null; reason: string },
): PaperCard | null {
  const content = claimTicket(writing, job, signature);
  const former = latestPaper(writing.store, job.id, 'claim-ticket');
  if (former === undefined) return issue(writing, job.id, content);
  const said: ClaimTicket = JSON.parse(former.content);
  const same = canonicalJson(saidOnTicket(said)) === canonicalJson(saidOnTicket(content));
  return same && signature === null
    ? null
    : issue(writing, job.id, following(content, former, reason));
}

/** Issues a job's tag anew when it would say something else than the one wired to the machine; else null. */
export function tagAnew(writing: Writing, job: JobDossier, reason: string): PaperCard | null {
  const content = tag(writing, job);
  const former = latestPaper(writing.store, job.id, 'tag');
  if (former === undefined) return issue(writing, job.id, content);
  const said: Tag = JSON.parse(former.content);
  const same = canonicalJson(saidOnTag(said)) === canonicalJson(saidOnTag(content));
  return same ? null : issue(writing, job.id, following(content, former, reason));
}
