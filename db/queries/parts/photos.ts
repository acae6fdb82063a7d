import { asc, eq, sql } from 'drizzle-orm';
import { PartPhotoCard } from '../../../shared/contract/parts/index.ts';
import { partPhoto, staff } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

const facts = {
  id: partPhoto.id,
  caption: partPhoto.caption,
  mediaType: partPhoto.mediaType,
  size: sql<number>`length(${partPhoto.bytes})`,
  sha256: partPhoto.sha256,
  by: staff.name,
  at: partPhoto.at,
};

/** The photos of a part, oldest first, without their bytes. */
export const photosOfPart = (store: ReadStore, partId: string): PartPhotoCard[] =>
  store
    .select(facts)
    .from(partPhoto)
    .innerJoin(staff, eq(staff.id, partPhoto.by))
    .where(eq(partPhoto.partId, partId))
    .orderBy(asc(partPhoto.at), asc(partPhoto.id))
    .all()
    .map((row) => PartPhotoCard.parse(row));

export function partPhotoById(store: ReadStore, id: string) {
  const row = store
    .select({ ...facts, bytes: partPhoto.bytes })
    .from(partPhoto)
    .innerJoin(staff, eq(staff.id, partPhoto.by))
    .where(eq(partPhoto.id, id))
    .get();
  return row && { ...PartPhotoCard.parse(row), bytes: row.bytes };
}
