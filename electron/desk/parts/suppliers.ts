import { eq } from 'drizzle-orm';
import { shopOf } from '../../../db/queries/office.ts';
import { arrivalsFrom } from '../../../db/queries/parts/orders.ts';
import { supplierById, supplierByKey, suppliersOf } from '../../../db/queries/parts/suppliers.ts';
import { otherNumber, part, supplier as supplierTable } from '../../../db/schema/index.ts';
import type { SupplierId } from '../../../shared/contract/ids.ts';
import { dateIn, daysFrom } from '../../../shared/work/calendar.ts';
import { fold } from '../../../shared/work/fold.ts';
import { seen } from '../../../shared/work/parts/reorder.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { keepSearchText } from './search-text.ts';

const suppliersByName = os.parts.suppliers.handler(({ context: { store } }) =>
  suppliersOf(store.read),
);

const THOUSAND = 1000;

const supplierLead = os.parts.supplierLead.handler(({ input, context: { store } }) => {
  const { id } = found(supplierById(store.read, input.supplierId), 'supplier');
  const { timeZone } = shopOf(store.read);
  const days = arrivalsFrom(store.read, id).map(({ ordered, came }) =>
    daysFrom(dateIn(timeZone, ordered), dateIn(timeZone, came)),
  );
  const lead = seen(days);
  return lead === null
    ? null
    : {
        lines: days.length,
        days: Math.round(lead.mean * THOUSAND),
        spread: Math.round(lead.spread * THOUSAND),
      };
});

interface Refusals {
  SUPPLIER_NAME_TAKEN: (more: { data: { supplierId: SupplierId } }) => Error;
}

/** @throws the declared SUPPLIER_NAME_TAKEN when another one goes by that name */
function freeName({ store }: Writing, name: string, own: string | null, errors: Refusals): string {
  const nameKey = fold(name);
  const twin = supplierByKey(store, nameKey);
  if (twin !== undefined && twin.id !== own)
    throw errors.SUPPLIER_NAME_TAKEN({ data: { supplierId: twin.id } });
  return nameKey;
}

const addSupplier = os.parts.addSupplier.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, newId, note } = writing;
    const { by: _by, ...terms } = input;
    const nameKey = freeName(writing, terms.name, null, errors);
    const id = newId();
    store
      .insert(supplierTable)
      .values({ id, ...terms, nameKey, priceFileMapping: '' })
      .run();
    note({ supplier: id, name: terms.name });
    return found(supplierById(store, id), 'supplier');
  }),
);

/** Parts and their numbers name a supplier in words: those that meant this one go on meaning it. */
function renameOnParts({ store }: Writing, formerKey: string, name: string): void {
  const named = store.select({ id: part.id, supplier: part.supplier }).from(part).all();
  for (const { id, supplier } of named) {
    if (supplier === name || fold(supplier) !== formerKey) continue;
    store.update(part).set({ supplier: name }).where(eq(part.id, id)).run();
    keepSearchText(store, id);
  }
  const theirs = store
    .select({ id: otherNumber.id, whose: otherNumber.whose })
    .from(otherNumber)
    .where(eq(otherNumber.kind, 'supplier'))
    .all();
  for (const { id, whose } of theirs)
    if (fold(whose) === formerKey)
      store.update(otherNumber).set({ whose: name }).where(eq(otherNumber.id, id)).run();
}

const reviseSupplier = os.parts.reviseSupplier.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, note } = writing;
    const { by: _by, supplierId, ...terms } = input;
    const before = found(supplierById(store, supplierId), 'supplier');
    const nameKey = freeName(writing, terms.name, supplierId, errors);
    store
      .update(supplierTable)
      .set({ ...terms, nameKey })
      .where(eq(supplierTable.id, supplierId))
      .run();
    if (before.name !== terms.name) renameOnParts(writing, fold(before.name), terms.name);
    note({ supplier: supplierId, ...terms });
    return found(supplierById(store, supplierId), 'supplier');
  }),
);

export const suppliers = { suppliers: suppliersByName, supplierLead, addSupplier, reviseSupplier };
