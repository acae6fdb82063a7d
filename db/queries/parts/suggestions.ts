import { eq } from 'drizzle-orm';
import { JobId, jobCode } from '../../../shared/contract/ids.ts';
import type { SuggestedOrder, Suggestion, Supplier } from '../../../shared/contract/parts/index.ts';
import { expectedParts } from '../../../shared/work/bench/expected-parts.ts';
import { addDays } from '../../../shared/work/calendar.ts';
import { fold } from '../../../shared/work/fold.ts';
import {
  carriageOn,
  orderQuantity,
  positionOf,
  shortOfMinimum,
} from '../../../shared/work/parts/order-quantity.ts';
import { costAt } from '../../../shared/work/parts/stock-ledger.ts';
import { usageFigures } from '../../../shared/work/parts/usage-figures.ts';
import { job, part, stockMovement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { missingOf, owedOf } from './job-parts.ts';
import { partName } from './names.ts';
import { openNeeds } from './needs.ts';
import { shelfSums } from './shelf.ts';
import { offerOf } from './supplier-numbers.ts';
import { suppliersOf } from './suppliers.ts';
import { weeklyUsage } from './usage.ts';

export interface ReorderTerms {
  /** Shares, 0 to 1. */
  service: number;
  holding: number;
  /** Minor units. */
  perOrder: number;
  /** UTC, ISO 8601. */
  at: string;
  /** ISO date. */
  today: string;
}

const shelves = (store: ReadStore) =>
  store
    .select({
      id: part.id,
      supersededBy: part.supersededBy,
      supplier: part.supplier,
      packSize: part.packSize,
      cost: part.cost,
      reorderPoint: part.reorderPoint,
      ...shelfSums,
    })
    .from(part)
    .leftJoin(stockMovement, eq(stockMovement.partId, part.id))
    .groupBy(part.id)
    .all();

type ShelfRow = ReturnType<typeof shelves>[number];

/** Parts that took each other's place, under the one that is bought today. */
function chains(rows: readonly ShelfRow[]): Map<ShelfRow, ShelfRow[]> {
  const byId = new Map(rows.map((row) => [row.id, row]));
  const current = (row: ShelfRow) => {
    let last = row;
    // Loops are refused when they are entered; one that came about all the same ends here.
    for (let steps = 0; last.supersededBy !== null && steps < rows.length; steps += 1)
      last = byId.get(last.supersededBy) ?? last;
    return last;
  };
  return Map.groupBy(rows, current);
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/** Adds up what several parts used week by week. */
function usedTogether(weeks: readonly (readonly number[])[]): number[] {
  const longest = Math.max(0, ...weeks.map(({ length }) => length));
  return Array.from({ length: longest }, (_, week) => sum(weeks.map((used) => used[week] ?? 0)));
}

interface Known {
  store: ReadStore;
  terms: ReorderTerms;
  usage: ReadonlyMap<string, number[]>;
  needed: ReadonlySet<string>;
}

const jobNumber = (store: ReadStore, jobId: string): number =>
  store.select({ number: job.number }).from(job).where(eq(job.id, jobId)).get()?.number ?? 0;

/** The jobs that miss any of some parts, and what is on order for each. */
function jobsMissing({ store, needed }: Known, chain: readonly ShelfRow[]): Suggestion['jobs'] {
  const ids = chain.map(({ id }) => id);
  if (!ids.some((id) => needed.has(id))) return [];
  const missing = missingOf(store, ids);
  const expected = expectedParts(missing, owedOf(store, ids));
  return missing.map((each) => ({
    jobId: JobId.parse(each.jobId),
    jobCode: jobCode(jobNumber(store, each.jobId)),
    missing: each.missing,
    onOrder: expected.get(each.jobId)?.onOrder ?? 0,
  }));
}

function suggestion(
  known: Known,
  { current, chain, supplier }: { current: ShelfRow; chain: ShelfRow[]; supplier: Supplier | null },
): Suggestion | undefined {
  const { store, terms, usage } = known;
  const jobs = jobsMissing(known, chain);
  const available = sum(chain.map(({ onHand, promised }) => onHand - promised));
  const onOrder = sum(chain.map((row) => row.onOrder));
  const missing = sum(jobs.map((each) => each.missing));
  const position = positionOf({ available, onOrder, missing });
  const typedPoint = Math.max(...chain.map(({ reorderPoint }) => reorderPoint));
  const figures =
    supplier === null
      ? null
      : usageFigures({
          weeks: usedTogether(chain.map(({ id }) => usage.get(id) ?? [])),
          lead: { mean: supplier.leadDays, spread: supplier.leadDaysSpread / 1000 },
          service: terms.service,
          perOrder: terms.perOrder,
          unitCost: current.cost,
          holding: terms.holding,
        });
  // Usage alone does not put a part on the shelf: what nobody keeps is ordered when a job needs it.
  const point = typedPoint > 0 ? Math.max(typedPoint, figures?.point ?? 0) : 0;
  const quantity = orderQuantity(position, point, current.packSize);
  const named = quantity > 0 ? partName(store, current.id) : undefined;
  if (named === undefined) return undefined;
  const offer = offerOf(store, current.id, {
    id: supplier?.id ?? null,
    name: supplier?.name ?? current.supplier,
  });
  const unitCost = offer.unitCost ?? current.cost;
  return {
    part: named,
    supplierNumber: offer.supplierNumber,
    packSize: current.packSize,
    unitCost,
    available,
    onOrder,
    missing,
    position,
    typedPoint,
    usage: figures,
    point,
    jobs,
    special: point === 0,
    quantity,
    amount: costAt(unitCost, quantity),
  };
}

/** What should be ordered, by supplier; parts of nobody that is known come last. */
export function suggestedOrders(store: ReadStore, terms: ReorderTerms): SuggestedOrder[] {
  const suppliers = new Map(suppliersOf(store).map((each) => [fold(each.name), each]));
  const known: Known = {
    store,
    terms,
    usage: weeklyUsage(store, terms.at),
    needed: new Set(openNeeds(store).flatMap(({ needed }) => [...needed.keys()])),
  };
  const lines = [...chains(shelves(store))].flatMap(([current, chain]) => {
    const supplier = suppliers.get(fold(current.supplier)) ?? null;
    const line = suggestion(known, { current, chain, supplier });
    return line === undefined ? [] : [{ name: supplier?.name ?? current.supplier, supplier, line }];
  });
  const groups = [...Map.groupBy(lines, ({ name }) => fold(name)).values()];
  return groups
    .flatMap((group) => {
      const [first] = group;
      if (first === undefined) return [];
      const { supplier, name } = first;
      const ordered = group.map(({ line }) => line);
      const goods = sum(ordered.map(({ amount }) => amount));
      return [
        {
          supplier,
          name,
          expectedOn: addDays(terms.today, supplier?.leadDays ?? 0),
          lines: ordered.toSorted((a, b) => a.part.number.localeCompare(b.part.number)),
          goods,
          carriage: supplier === null ? 0 : carriageOn(supplier, goods),
          shortOfMinimum: supplier === null ? 0 : shortOfMinimum(supplier, goods),
        },
      ];
    })
    .toSorted(
      (a, b) =>
        Number(a.supplier === null) - Number(b.supplier === null) || a.name.localeCompare(b.name),
    );
}
