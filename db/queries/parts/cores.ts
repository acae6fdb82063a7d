import { asc, eq, gt } from 'drizzle-orm';
import { jobCode, SupplierId } from '../../../shared/contract/ids.ts';
import type { PartCores } from '../../../shared/contract/parts/index.ts';
import { fold } from '../../../shared/work/fold.ts';
import { coreStanding } from '../../../shared/work/parts/cores.ts';
import { coreMovement, job, part, staff, supplier } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { partName } from './names.ts';
import { supplierByKey } from './suppliers.ts';

const movementsOf = (store: ReadStore, partId: string) =>
  store
    .select({
      movement: coreMovement,
      by: staff.name,
      jobNumber: job.number,
      supplierName: supplier.name,
    })
    .from(coreMovement)
    .innerJoin(staff, eq(staff.id, coreMovement.by))
    .leftJoin(job, eq(job.id, coreMovement.jobId))
    .leftJoin(supplier, eq(supplier.id, coreMovement.supplierId))
    .where(eq(coreMovement.partId, partId))
    .orderBy(asc(coreMovement.at), asc(coreMovement.id))
    .all();

type Moved = ReturnType<typeof movementsOf>[number];

const standingOf = (rows: readonly Moved[]) => coreStanding(rows.map(({ movement }) => movement));

/** What is with each supplier: of all movements, those that name them. */
function awayBySupplier(rows: readonly Moved[]): PartCores['away'] {
  const named = Map.groupBy(rows, ({ movement }) => movement.supplierId);
  return [...named].flatMap(([supplierId, own]) => {
    if (supplierId === null) return [];
    const { away, expected } = standingOf(own);
    return away <= 0
      ? []
      : [
          {
            supplierId: SupplierId.parse(supplierId),
            supplierName: own[0]?.supplierName ?? '',
            quantity: away,
            expected,
          },
        ];
  });
}

/** Where the old ones of one part are; undefined for a part that isn't there. */
export function coresOfPart(store: ReadStore, partId: string): PartCores | undefined {
  const named = partName(store, partId);
  const facts = store
    .select({ coreCharge: part.coreCharge, supplier: part.supplier })
    .from(part)
    .where(eq(part.id, partId))
    .get();
  if (named === undefined || facts === undefined) return undefined;
  const rows = movementsOf(store, partId);
  const { here, credited } = standingOf(rows);
  return {
    part: named,
    coreCharge: facts.coreCharge,
    supplierId: supplierByKey(store, fold(facts.supplier))?.id ?? null,
    here,
    away: awayBySupplier(rows),
    credited,
    events: rows.toReversed().map(({ movement, by, jobNumber, supplierName }) => ({
      kind: movement.kind,
      quantity: movement.quantity,
      amount: movement.amount,
      jobCode: jobNumber === null ? '' : jobCode(jobNumber),
      supplierName: supplierName ?? '',
      note: movement.note,
      by,
      at: movement.at,
    })),
  };
}

/** Every part with a core charge or an old one that came in: those with any here or away first. */
export function partsWithCores(store: ReadStore): PartCores[] {
  const charged = store.select({ id: part.id }).from(part).where(gt(part.coreCharge, 0)).all();
  const moved = store.selectDistinct({ id: coreMovement.partId }).from(coreMovement).all();
  const ids = new Set([...moved, ...charged].map(({ id }) => id));
  const pending = ({ here, away }: PartCores) => here > 0 || away.length > 0;
  return [...ids]
    .flatMap((id) => coresOfPart(store, id) ?? [])
    .toSorted(
      (a, b) =>
        Number(pending(b)) - Number(pending(a)) || a.part.number.localeCompare(b.part.number),
    );
}
