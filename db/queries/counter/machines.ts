import { and, asc, eq, type SQL, sql } from 'drizzle-orm';
import type { Machine } from '../../../shared/contract/counter/index.ts';
import {
  CustomerId,
  EngineId,
  EngineModelId,
  jobCode,
  MachineId,
} from '../../../shared/contract/ids.ts';
import { prepared } from '../../prepared.ts';
import { customer, engine, engineModel, job, machine } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { matches } from '../search-text.ts';

const openJobNumber = sql<number | null>`(
  SELECT max(${job.number}) FROM ${job} WHERE ${job.machineId} = ${machine.id} AND ${job.state} <> 'handed-over'
)`;

const rows = (store: ReadStore, where: SQL | undefined, limit: number) =>
  store
    .select({
      machine,
      engine,
      customerName: customer.name,
      modelMake: engineModel.make,
      modelName: engineModel.model,
      openJobNumber,
    })
    .from(machine)
    .innerJoin(engine, eq(engine.machineId, machine.id))
    .innerJoin(customer, eq(customer.id, machine.customerId))
    .leftJoin(engineModel, eq(engineModel.id, engine.engineModelId))
    .where(where)
    .orderBy(asc(machine.searchText))
    .limit(limit);

type Row = ReturnType<ReturnType<typeof rows>['all']>[number];

const asMachine = (row: Row): Machine => ({
  id: MachineId.parse(row.machine.id),
  customerId: CustomerId.parse(row.machine.customerId),
  customerName: row.customerName,
  kind: row.machine.kind,
  make: row.machine.make,
  model: row.machine.model,
  serial: row.machine.serial,
  openJob: row.openJobNumber === null ? null : jobCode(row.openJobNumber),
  engine: {
    id: EngineId.parse(row.engine.id),
    make: row.engine.make,
    model: row.engine.model,
    typeCode: row.engine.typeCode,
    serial: row.engine.serial,
    dateCode: row.engine.dateCode,
    engineModelId:
      row.engine.engineModelId === null ? null : EngineModelId.parse(row.engine.engineModelId),
    engineModelName: [row.modelMake, row.modelName].filter(Boolean).join(' '),
  },
});

export const findMachines = (
  store: ReadStore,
  text: string,
  customerId: string | null,
  limit: number,
): Machine[] =>
  rows(
    store,
    and(
      matches(machine.searchText, text),
      customerId === null ? undefined : eq(machine.customerId, customerId),
    ),
    limit,
  )
    .all()
    .map(asMachine);

const rowById = prepared((store) =>
  rows(store, eq(machine.id, sql.placeholder('id')), 1).prepare(),
);

export const machineById = (store: ReadStore, id: string): Machine | undefined =>
  rowById(store).all({ id }).map(asMachine)[0];

export const machineBySerialKey = (store: ReadStore, serialKey: string): Machine | undefined =>
  rows(store, eq(machine.serialKey, serialKey), 1).all().map(asMachine)[0];
