import { eq } from 'drizzle-orm';
import { partById } from '../../../db/queries/parts/part.ts';
import { bundleById, bundleRowByName, bundlesOf } from '../../../db/queries/till/bundles.ts';
import { bundle } from '../../../db/schema/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';

const list = os.till.bundles.handler(({ context }) => bundlesOf(context.store.read));

const save = os.till.saveBundle.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, newId, note }) => {
    const { id, name, note: words, lines } = input;
    for (const { partId } of lines)
      if (partId !== null) found(partById(store, partId), 'part on a line');
    if (id !== null) found(bundleById(store, id), 'bundle');
    const namesake = bundleRowByName(store, name);
    const retired = namesake?.retired === true && id === null ? namesake.id : null;
    if (namesake !== undefined && namesake.id !== id && retired === null)
      throw errors.BUNDLE_NAME_TAKEN();
    const facts = { name, note: words, lines, retired: false };
    const kept = id ?? retired ?? newId();
    store
      .insert(bundle)
      .values({ id: kept, ...facts })
      .onConflictDoUpdate({ target: bundle.id, set: facts })
      .run();
    note({ bundle: kept, name, lines: lines.length });
    return found(bundleById(store, kept), 'bundle');
  }),
);

const retire = os.till.retireBundle.handler(({ input, context, path }) =>
  write(context, path, input.by, ({ store, note }) => {
    const { name } = found(bundleById(store, input.id), 'bundle');
    store.update(bundle).set({ retired: true }).where(eq(bundle.id, input.id)).run();
    note({ bundle: input.id, name });
    return bundlesOf(store);
  }),
);

export const bundles = { bundles: list, saveBundle: save, retireBundle: retire };
