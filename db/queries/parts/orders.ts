import { and, asc, desc, eq, gt, inArray, type SQL, sql } from 'drizzle-orm';
import {
  JobId,
  jobCode,
  PurchaseOrderId,
  PurchaseOrderLineId,
  SupplierId,
} from '../../../shared/contract/ids.ts';
import type {
  LineToCome,
  PurchaseOrder,
  PurchaseOrderCard,
  PurchaseOrderLine,
} from '../../../shared/contract/parts/index.ts';
import { orderState } from '../../../shared/work/parts/order-state.ts';
import { costAt } from '../../../shared/work/parts/stock-ledger.ts';
import {
  job,
  purchaseOrder,
  purchaseOrderLine,
  staff,
  stockMovement,
  supplier,
} from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { paperCard } from '../office.ts';
import { expectedChanges, expectedDay } from './expected.ts';
import { partNames } from './names.ts';

/** `P-000042`. */
export const orderNumber = (number: number): string => `P-${String(number).padStart(6, '0')}`;

const owedOfLine = sql<number>`coalesce(sum(${stockMovement.ordered}), 0)`;

/** What was ordered, came in, and is still owed on each line of some orders. */
const lineSums = (store: ReadStore, where: SQL | undefined, having?: SQL) =>
  store
    .select({
      line: purchaseOrderLine,
      jobNumber: job.number,
      expectedOn: expectedDay,
      received: sql<number>`coalesce(sum(iif(${stockMovement.kind} = 'received', ${stockMovement.quantity}, 0)), 0)`,
      closed: sql<number>`coalesce(-sum(iif(${stockMovement.kind} = 'order-closed', ${stockMovement.ordered}, 0)), 0)`,
      owed: owedOfLine,
    })
    .from(purchaseOrderLine)
    .innerJoin(purchaseOrder, eq(purchaseOrder.id, purchaseOrderLine.orderId))
    .leftJoin(stockMovement, eq(stockMovement.orderLineId, purchaseOrderLine.id))
    .leftJoin(job, eq(job.id, purchaseOrderLine.jobId))
    .where(where)
    .groupBy(purchaseOrderLine.id)
    .having(having)
    .orderBy(asc(purchaseOrderLine.id))
    .all();

type LineSums = ReturnType<typeof lineSums>[number];

const amountOf = ({ line }: LineSums): number => costAt(line.unitCost, line.quantity);

type Head = typeof purchaseOrder.$inferSelect & { supplierName: string; byName: string };

function heads(store: ReadStore, where: SQL | undefined): Head[] {
  return store
    .select({ order: purchaseOrder, supplierName: supplier.name, byName: staff.name })
    .from(purchaseOrder)
    .innerJoin(supplier, eq(supplier.id, purchaseOrder.supplierId))
    .innerJoin(staff, eq(staff.id, purchaseOrder.by))
    .where(where)
    .orderBy(desc(purchaseOrder.number))
    .all()
    .map(({ order, ...names }) => ({ ...order, ...names }));
}

function card(head: Head, lines: readonly LineSums[], today: string): PurchaseOrderCard {
  const open = lines.filter(({ owed }) => owed > 0);
  const days = open.flatMap(({ expectedOn }) => expectedOn ?? []).toSorted();
  return {
    id: PurchaseOrderId.parse(head.id),
    number: orderNumber(head.number),
    supplierId: SupplierId.parse(head.supplierId),
    supplierName: head.supplierName,
    at: head.at,
    expectedOn: open.length === 0 ? head.expectedOn : (days[0] ?? null),
    state: orderState(lines),
    late: days.some((day) => day < today),
    lines: lines.length,
    openLines: open.length,
    goods: lines.reduce((sum, line) => sum + amountOf(line), 0),
  };
}

/** Those without a day come last. */
const byExpected = (a: { expectedOn: string | null }, b: { expectedOn: string | null }): number =>
  (a.expectedOn ?? '~').localeCompare(b.expectedOn ?? '~');

interface Wanted {
  open: boolean;
  supplierId: string | null;
  limit: number;
  /** ISO date. */
  today: string;
}

/** Open ones by the day that they are expected on, those without one last; all of them the newest first. */
export function orderCards(store: ReadStore, wanted: Wanted): PurchaseOrderCard[] {
  const owing = sql`${purchaseOrder.id} IN (
    SELECT ${purchaseOrderLine.orderId} FROM ${purchaseOrderLine}
    JOIN ${stockMovement} ON ${stockMovement.orderLineId} = ${purchaseOrderLine.id}
    GROUP BY ${purchaseOrderLine.id} HAVING sum(${stockMovement.ordered}) > 0
  )`;
  const found = heads(
    store,
    and(
      wanted.open ? owing : undefined,
      wanted.supplierId === null ? undefined : eq(purchaseOrder.supplierId, wanted.supplierId),
    ),
  );
  // Of those that are all owed, the lines say which comes first; of all others, the number does.
  const heading = wanted.open ? found : found.slice(0, wanted.limit);
  const ids = heading.map(({ id }) => id);
  const lines = Map.groupBy(
    ids.length === 0 ? [] : lineSums(store, inArray(purchaseOrderLine.orderId, ids)),
    ({ line }) => line.orderId,
  );
  const cards = heading.map((head) => card(head, lines.get(head.id) ?? [], wanted.today));
  return wanted.open ? cards.toSorted(byExpected).slice(0, wanted.limit) : cards;
}

/** All that suppliers still owe, line by line: by the day that it is expected on, those without one last. */
export function linesToCome(store: ReadStore, today: string): LineToCome[] {
  const owing = lineSums(store, undefined, gt(owedOfLine, 0));
  const of = new Map(heads(store, undefined).map((head) => [head.id, head]));
  const parts = new Map<string, PurchaseOrderLine['part']>(
    partNames(
      store,
      owing.map(({ line }) => line.partId),
    ).map((part) => [part.id, part]),
  );
  return owing
    .flatMap(({ line, jobNumber, expectedOn, received, owed }) => {
      const head = of.get(line.orderId);
      const part = parts.get(line.partId);
      if (head === undefined || part === undefined) return [];
      return [
        {
          lineId: PurchaseOrderLineId.parse(line.id),
          orderId: PurchaseOrderId.parse(head.id),
          orderNumber: orderNumber(head.number),
          supplierName: head.supplierName,
          part,
          ordered: line.quantity,
          received,
          owed,
          expectedOn,
          late: expectedOn !== null && expectedOn < today,
          jobCode: jobNumber === null ? '' : jobCode(jobNumber),
        },
      ];
    })
    .toSorted(byExpected);
}

/** On the order's own page nobody asks which order it was. */
const withoutOrder = (reason: string): string => reason.replace(/^Order P-\d+[,:] /, '');

const eventsOf = (store: ReadStore, lineIds: readonly string[]) =>
  store
    .select({ movement: stockMovement, by: staff.name })
    .from(stockMovement)
    .innerJoin(staff, eq(staff.id, stockMovement.by))
    .where(
      and(
        inArray(stockMovement.orderLineId, [...lineIds]),
        inArray(stockMovement.kind, ['received', 'order-closed']),
      ),
    )
    .orderBy(asc(stockMovement.at), asc(stockMovement.id))
    .all();

export function orderById(store: ReadStore, id: string, today: string): PurchaseOrder | undefined {
  const [head] = heads(store, eq(purchaseOrder.id, id));
  if (head === undefined) return undefined;
  const lines = lineSums(store, eq(purchaseOrderLine.orderId, id));
  const paper = paperCard(store, head.paperId);
  if (paper === undefined) return undefined;
  const parts = new Map<string, PurchaseOrderLine['part']>(
    partNames(
      store,
      lines.map(({ line }) => line.partId),
    ).map((part) => [part.id, part]),
  );
  const lineIds = lines.map(({ line }) => line.id);
  const changes = expectedChanges(store, lineIds);
  const events = Map.groupBy(eventsOf(store, lineIds), ({ movement }) => movement.orderLineId);
  return {
    ...card(head, lines, today),
    carriage: head.carriage,
    note: head.note,
    by: head.byName,
    paper,
    items: lines.flatMap((sums) => {
      const { line, jobNumber, expectedOn, received, closed, owed } = sums;
      const part = parts.get(line.partId);
      if (part === undefined) return [];
      return [
        {
          id: PurchaseOrderLineId.parse(line.id),
          part,
          supplierNumber: line.supplierNumber,
          ordered: line.quantity,
          received,
          owed,
          closed,
          unitCost: line.unitCost,
          amount: amountOf(sums),
          jobId: line.jobId === null ? null : JobId.parse(line.jobId),
          jobCode: jobNumber === null ? '' : jobCode(jobNumber),
          expectedOn,
          expectedChanges: changes.get(line.id) ?? [],
          events: (events.get(line.id) ?? []).map(({ movement, by }) => ({
            kind: movement.kind === 'received' ? ('received' as const) : ('order-closed' as const),
            quantity: movement.kind === 'received' ? movement.quantity : -movement.ordered,
            words: withoutOrder(movement.reason),
            by,
            at: movement.at,
          })),
        },
      ];
    }),
  };
}

/** When each line of a supplier's orders was ordered, and when the first of it came in. */
export const arrivalsFrom = (store: ReadStore, supplierId: string) =>
  store
    .select({ ordered: purchaseOrder.at, came: sql<string>`min(${stockMovement.at})` })
    .from(purchaseOrder)
    .innerJoin(purchaseOrderLine, eq(purchaseOrderLine.orderId, purchaseOrder.id))
    .innerJoin(stockMovement, eq(stockMovement.orderLineId, purchaseOrderLine.id))
    .where(and(eq(purchaseOrder.supplierId, supplierId), eq(stockMovement.kind, 'received')))
    .groupBy(purchaseOrderLine.id)
    .all();
