import { sourceById, sourceList } from '../../../db/queries/specbook/sources.ts';
import { source } from '../../../db/schema/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';

export const sources = os.specbook.sources.handler(({ context }) => sourceList(context.store.read));

export const addSource = os.specbook.addSource.handler(
  ({ input: { by, ...facts }, context, path }) =>
    write(context, path, by, ({ store, newId, note }) => {
      const id = newId();
      store
        .insert(source)
        .values({ id, ...facts })
        .run();
      note({ source: id, title: facts.title });
      return found(sourceById(store, id), 'source');
    }),
);
