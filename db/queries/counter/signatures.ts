import { and, desc, eq, sql } from 'drizzle-orm';
import { z } from 'zod';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import { Signature, type SignedBy } from '../../../shared/contract/fields.ts';
import { isTypedName } from '../../../shared/work/typed-name.ts';
import { issuedPaper, staff } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/** A signature without its strokes; a name that was typed was typed by whoever was at the station. */
export const signedBy = (signature: Signature, station: string): SignedBy => ({
  name: signature.name,
  typedBy: isTypedName(signature) ? station : null,
  at: signature.signedAt,
});

const Both = z.object({ customer: Signature, shop: Signature });

/** Both signatures on a job's work order; null before there is one. */
export function handoverSigned(store: ReadStore, jobId: string): JobDossier['handoverSigned'] {
  const row = store
    .select({
      both: sql<string>`json_object(
        'customer', json_extract(${issuedPaper.content}, '$.customerSignature'),
        'shop', json_extract(${issuedPaper.content}, '$.shopSignature'))`,
      station: staff.name,
    })
    .from(issuedPaper)
    .innerJoin(staff, eq(staff.id, issuedPaper.issuedBy))
    .where(and(eq(issuedPaper.jobId, jobId), eq(issuedPaper.kind, 'work-order')))
    .orderBy(desc(issuedPaper.id))
    .limit(1)
    .get();
  if (row === undefined) return null;
  const { customer, shop } = Both.parse(JSON.parse(row.both));
  return { customer: signedBy(customer, row.station), shop: signedBy(shop, row.station) };
}
