import { createHash } from 'node:crypto';
import { paperCard } from '../../../db/queries/office.ts';
import { issuedPaper } from '../../../db/schema/index.ts';
import type { PaperCard } from '../../../shared/contract/counter/index.ts';
import type { PaperContent } from '../../paper/content.ts';
import { canonicalJson, fingerprintOf } from '../../paper/fingerprint.ts';
import { paperFileName, paperTitle } from '../../paper/index.ts';
import { found } from '../refuse.ts';
import type { Writing } from '../writing.ts';

/**
 * Issues a paper inside the transaction that it belongs to: its content, the fingerprint of that, and the
 * PDF are kept together and never change.
 * @param jobId null for a paper of no single job: a receipt over several, a statement
 */
export function issue(writing: Writing, jobId: string | null, content: PaperContent): PaperCard {
  const { store, staff, at, newId, drawPaper } = writing;
  const fingerprint = fingerprintOf(content);
  const pdf = Buffer.from(drawPaper(content, fingerprint));
  const id = newId();
  store
    .insert(issuedPaper)
    .values({
      id,
      kind: content.kind,
      number: content.number,
      jobId: jobId ?? '',
      title: paperTitle(content),
      fileName: paperFileName(content),
      content: canonicalJson(content),
      fingerprint,
      pdf,
      pdfSha256: createHash('sha256').update(pdf).digest('hex'),
      issuedAt: at,
      issuedBy: staff.id,
    })
    .run();
  return found(paperCard(store, id), 'paper');
}
