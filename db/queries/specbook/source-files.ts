import { asc, eq, sql } from 'drizzle-orm';
import type { SourceFileId } from '../../../shared/contract/ids.ts';
import { SourceFile } from '../../../shared/contract/specbook-files.ts';
import { sourceFile, staff } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

const cards = (store: ReadStore) =>
  store
    .select({
      id: sourceFile.id,
      fileName: sourceFile.fileName,
      mediaType: sourceFile.mediaType,
      size: sql<number>`length(${sourceFile.bytes})`,
      sha256: sourceFile.sha256,
      by: staff.name,
      at: sourceFile.at,
    })
    .from(sourceFile)
    .innerJoin(staff, eq(staff.id, sourceFile.by));

/** A source's files, oldest first; their bytes stay where they are. */
export const sourceFilesOf = (store: ReadStore, sourceId: string): SourceFile[] =>
  cards(store)
    .where(eq(sourceFile.sourceId, sourceId))
    .orderBy(asc(sourceFile.at), asc(sourceFile.id))
    .all()
    .map((row) => SourceFile.parse(row));

export function sourceFileById(
  store: ReadStore,
  id: SourceFileId,
): (SourceFile & { content: Buffer }) | undefined {
  const card = cards(store).where(eq(sourceFile.id, id)).get();
  const row = store
    .select({ bytes: sourceFile.bytes })
    .from(sourceFile)
    .where(eq(sourceFile.id, id))
    .get();
  return card && row && { ...SourceFile.parse(card), content: row.bytes };
}
