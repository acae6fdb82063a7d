import { asc, eq } from 'drizzle-orm';
import { staffById } from '../../../db/queries/office.ts';
import { staff as staffTable } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import { StaffId } from '../../../shared/contract/ids.ts';
import type { StaffCost } from '../../../shared/contract/till/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';

const costsOf = (store: ReadStore): StaffCost[] =>
  store
    .select()
    .from(staffTable)
    .where(eq(staffTable.active, true))
    .orderBy(asc(staffTable.name))
    .all()
    .map(({ id, name, hourlyCost }) => ({ staffId: StaffId.parse(id), name, hourlyCost }));

const get = os.till.staffCosts.handler(({ context }) => costsOf(context.store.read));

const set = os.till.setStaffCost.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, note }) => {
    const { staffId, hourlyCost } = input;
    if (staff.role !== 'owner') throw errors.OWNER_WANTED();
    const { name } = found(staffById(store, staffId), 'member of the staff');
    store.update(staffTable).set({ hourlyCost }).where(eq(staffTable.id, staffId)).run();
    note({ staff: staffId, name, hourlyCost });
    return costsOf(store);
  }),
);

export const staffCosts = { staffCosts: get, setStaffCost: set };
