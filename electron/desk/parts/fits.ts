import { eq } from 'drizzle-orm';
import { fitsOf } from '../../../db/queries/parts/fits.ts';
import { partById } from '../../../db/queries/parts/part.ts';
import { engineModelById } from '../../../db/queries/specbook/models.ts';
import { partFit } from '../../../db/schema/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';

export const setFits = os.parts.setFits.handler(({ input, context, path }) =>
  write(context, path, input.by, ({ store, note }) => {
    const { partId, fits } = input;
    const part = found(partById(store, partId), 'part');
    store.delete(partFit).where(eq(partFit.partId, partId)).run();
    for (const fit of fits) {
      found(engineModelById(store, fit.engineModelId), 'engine model');
      store
        .insert(partFit)
        .values({ partId, ...fit })
        .onConflictDoNothing()
        .run();
    }
    const kept = fitsOf(store, partId);
    note({ part: partId, number: part.number, fits: kept.map(({ model }) => model).join('; ') });
    return kept;
  }),
);
