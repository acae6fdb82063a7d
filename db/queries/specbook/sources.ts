import { asc, eq } from 'drizzle-orm';
import { SourceId } from '../../../shared/contract/ids.ts';
import type { Source } from '../../../shared/contract/specbook.ts';
import { source } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

export const asSource = (row: typeof source.$inferSelect): Source => ({
  ...row,
  id: SourceId.parse(row.id),
});

export const sourceList = (store: ReadStore): Source[] =>
  store.select().from(source).orderBy(asc(source.title)).all().map(asSource);

export function sourceById(store: ReadStore, id: string): Source | undefined {
  const row = store.select().from(source).where(eq(source.id, id)).get();
  return row && asSource(row);
}
