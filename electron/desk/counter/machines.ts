import { eq } from 'drizzle-orm';
import { customerById } from '../../../db/queries/counter/customers.ts';
import { dossierOf, jobsOfMachine } from '../../../db/queries/counter/jobs.ts';
import {
  findMachines,
  machineById,
  machineBySerialKey,
} from '../../../db/queries/counter/machines.ts';
import { searchTextOf } from '../../../db/queries/search-text.ts';
import { engineModelById } from '../../../db/queries/specbook.ts';
import { engine as engineTable, machine as machineTable } from '../../../db/schema/index.ts';
import type { Customer, Machine } from '../../../shared/contract/counter/index.ts';
import { foldNumber } from '../../../shared/work/fold.ts';
import { MACHINE_KIND_LABELS } from '../../../shared/work/vocabulary.ts';
import { changedFacts } from '../changed-facts.ts';
import { os } from '../implementer.ts';
import { tagAnew } from '../papers/intake-anew.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { findJobAnew } from './search-text.ts';

type Facts = Pick<Machine, 'kind' | 'make' | 'model' | 'serial'> & {
  engine: Pick<
    Machine['engine'],
    'make' | 'model' | 'typeCode' | 'serial' | 'dateCode' | 'engineModelId'
  >;
};

/** Two makers may number alike, one maker doesn't number two machines alike. */
const serialKeyOf = ({ make, serial }: Facts): string | null => {
  const number = foldNumber(serial);
  return number === '' ? null : `${foldNumber(make)}|${number}`;
};

const machineSearchText = ({ engine, ...machine }: Facts, ownerName: string): string =>
  searchTextOf(
    machine.serial,
    engine.serial,
    MACHINE_KIND_LABELS[machine.kind],
    machine.make,
    machine.model,
    engine.make,
    engine.model,
    engine.typeCode,
    ownerName,
  );

/** A machine that was sold or given away: its history stays with it, and the journal says whose it was. */
export function giveMachineTo(
  { store, note }: Writing,
  machine: Machine,
  owner: Customer,
): Machine {
  store
    .update(machineTable)
    .set({ customerId: owner.id, searchText: machineSearchText(machine, owner.name) })
    .where(eq(machineTable.id, machine.id))
    .run();
  note({ machine: machine.id, from: machine.customerId, to: owner.id });
  return found(machineById(store, machine.id), 'machine');
}

/** After its owner's name was mended. */
export function findMachineAnew({ store }: Writing, machine: Machine): void {
  store
    .update(machineTable)
    .set({ searchText: machineSearchText(machine, machine.customerName) })
    .where(eq(machineTable.id, machine.id))
    .run();
}

/** The machine that has this make and serial number already. */
export function machineWithSameSerial(writing: Writing, facts: Facts): Machine | undefined {
  const key = serialKeyOf(facts);
  return key === null ? undefined : machineBySerialKey(writing.store, key);
}

/** Adds a machine with its engine within a transaction: intake does it too. */
export function insertMachine(writing: Writing, customerId: string, facts: Facts): Machine {
  const { store, newId } = writing;
  const owner = found(customerById(store, customerId), 'customer');
  const { engine, ...machine } = facts;
  if (engine.engineModelId !== null)
    found(engineModelById(store, engine.engineModelId), 'engine model');
  const id = newId();
  store
    .insert(machineTable)
    .values({
      id,
      customerId: owner.id,
      ...machine,
      serialKey: serialKeyOf(facts),
      searchText: machineSearchText(facts, owner.name),
    })
    .run();
  store
    .insert(engineTable)
    .values({ id: newId(), machineId: id, ...engine })
    .run();
  return found(machineById(store, id), 'machine');
}

const find = os.counter.findMachines.handler(({ input, context }) =>
  findMachines(context.store.read, input.text, input.customerId, input.limit),
);

const add = os.counter.addMachine.handler(
  ({ input: { by, customerId, ...facts }, context, errors, path }) =>
    write(context, path, by, (writing) => {
      const twin = machineWithSameSerial(writing, facts);
      if (twin)
        throw errors.SERIAL_TAKEN({
          data: { machineId: twin.id, customerName: twin.customerName },
        });
      const added = insertMachine(writing, customerId, facts);
      writing.note({ machine: added.id, customer: customerId });
      return added;
    }),
);

/** What is on the plates, each under a name of its own. */
const onPlates = ({ engine, ...machine }: Facts) => ({
  kind: machine.kind,
  make: machine.make,
  model: machine.model,
  serial: machine.serial,
  engineMake: engine.make,
  engineModel: engine.model,
  typeCode: engine.typeCode,
  engineSerial: engine.serial,
  dateCode: engine.dateCode,
});

const amend = os.counter.amendMachine.handler(
  ({ input: { by, id, engine: plate, ...facts }, context, errors, path }) =>
    write(context, path, by, (writing) => {
      const { store, note } = writing;
      const before = found(machineById(store, id), 'machine');
      const after = { ...facts, engine: { ...before.engine, ...plate } };
      const changes = changedFacts(onPlates(before), onPlates(after));
      if (Object.keys(changes).length === 0) throw errors.NOTHING_CHANGED();
      const twin = machineWithSameSerial(writing, after);
      if (twin && twin.id !== id)
        throw errors.SERIAL_TAKEN({
          data: { machineId: twin.id, customerName: twin.customerName },
        });
      store
        .update(machineTable)
        .set({
          ...facts,
          serialKey: serialKeyOf(after),
          searchText: machineSearchText(after, before.customerName),
        })
        .where(eq(machineTable.id, id))
        .run();
      store.update(engineTable).set(plate).where(eq(engineTable.machineId, id)).run();
      const jobs = jobsOfMachine(store, id);
      for (const job of jobs) findJobAnew(writing, job.id);
      const tags = jobs
        .filter(({ state }) => state !== 'handed-over')
        .flatMap((job) => tagAnew(writing, found(dossierOf(store, job.id), 'job'), '') ?? []);
      note({ machine: id, ...changes });
      return { machine: found(machineById(store, id), 'machine'), tags };
    }),
);

export const machines = { findMachines: find, addMachine: add, amendMachine: amend };
