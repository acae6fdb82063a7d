import { and, eq, ne } from 'drizzle-orm';
import { jobRowById } from '../../db/queries/counter/jobs.ts';
import { staffById, staffList } from '../../db/queries/office.ts';
import { runningClocks } from '../../db/queries/till/clock.ts';
import { staff as staffTable } from '../../db/schema/index.ts';
import type { WriteStore } from '../../db/store.ts';
import { jobCode, StaffId } from '../../shared/contract/ids.ts';
import type { Staff } from '../../shared/contract/office.ts';
import { changedFacts } from './changed-facts.ts';
import { os } from './implementer.ts';
import { found } from './refuse.ts';
import { write } from './writing.ts';

const list = os.office.staff.handler(({ context }) => staffList(context.store.read));

const isTaken = (store: WriteStore, name: string, by: string): boolean =>
  store
    .select()
    .from(staffTable)
    .where(and(eq(staffTable.name, name), ne(staffTable.id, by)))
    .get() !== undefined;

const add = os.office.addStaff.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, newId, note }) => {
    const { name, role } = input;
    if (role === 'owner' && staff.role !== 'owner') throw errors.OWNER_WANTED();
    const person = { id: StaffId.parse(newId()), name, role, active: true };
    if (isTaken(store, name, person.id)) throw errors.STAFF_NAME_TAKEN();
    store.insert(staffTable).values(person).run();
    note({ staff: person.id, name, role });
    return person;
  }),
);

const decides = ({ role, active }: Pick<Staff, 'role' | 'active'>): boolean =>
  role === 'owner' && active;

const amend = os.office.amendStaff.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, note }) => {
    const { by: _by, id, ...facts } = input;
    if (staff.role !== 'owner') throw errors.OWNER_WANTED();
    const { name, role, active } = found(staffById(store, id), 'member of the staff');
    if (isTaken(store, facts.name, id)) throw errors.STAFF_NAME_TAKEN();
    const others = staffList(store).filter((person) => person.id !== id);
    if (!decides(facts) && !others.some(decides)) throw errors.LAST_OWNER();
    const clock = facts.active ? undefined : runningClocks(store).find((it) => it.staffId === id);
    if (clock !== undefined) {
      const { number } = found(jobRowById(store, clock.jobId), 'job');
      throw errors.CLOCK_STILL_RUNS({ data: { jobCode: jobCode(number) } });
    }
    store.update(staffTable).set(facts).where(eq(staffTable.id, id)).run();
    note({ staff: id, ...changedFacts({ name, role, active }, facts) });
    return found(staffById(store, id), 'member of the staff');
  }),
);

export const people = { staff: list, addStaff: add, amendStaff: amend };
