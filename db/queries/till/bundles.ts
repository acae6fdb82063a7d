import { asc, eq } from 'drizzle-orm';
import { BundleId } from '../../../shared/contract/ids.ts';
import type { Bundle, LineInput } from '../../../shared/contract/till/index.ts';
import { rateFor } from '../../../shared/work/till/clock-lines.ts';
import { bundle } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { shopOf } from '../office.ts';
import { partById } from '../parts/part.ts';
import { tillRulesOf } from './rules.ts';

/** Those in use, by name, at today's prices. */
export const bundlesOf = (store: ReadStore): Bundle[] =>
  store
    .select()
    .from(bundle)
    .where(eq(bundle.retired, false))
    .orderBy(asc(bundle.name))
    .all()
    .map((row) => read(store, row));

export function bundleById(store: ReadStore, id: string): Bundle | undefined {
  const row = store.select().from(bundle).where(eq(bundle.id, id)).get();
  return row && read(store, row);
}

export const bundleRowByName = (store: ReadStore, name: string) =>
  store.select().from(bundle).where(eq(bundle.name, name)).get();

function read(store: ReadStore, row: typeof bundle.$inferSelect): Bundle {
  const { labourRates } = tillRulesOf(store);
  const { labourRate } = shopOf(store);
  return {
    id: BundleId.parse(row.id),
    name: row.name,
    note: row.note,
    lines: row.lines.map((line) => atToday(store, line, { labourRates, labourRate })),
    hours: row.lines.reduce(
      (sum, { kind, unit, quantity }) => sum + (kind === 'labour' && unit === 'h' ? quantity : 0),
      0,
    ),
  };
}

type Rates = Parameters<typeof rateFor>[1];

/** A kept line as it would be written today: what followed a rule follows it still. */
function atToday(store: ReadStore, line: LineInput, rates: Rates): Bundle['lines'][number] {
  const part = line.partId === null ? undefined : partById(store, line.partId);
  const partNumber = part?.number ?? '';
  switch (line.priceFrom) {
    case 'labour-rate':
      return { ...line, partNumber, unitPrice: rateFor(line.workKind, rates) };
    case 'shelf-price':
    case 'list-price':
    case 'cost-and-markup':
      return part === undefined
        ? { ...line, partNumber }
        : {
            ...line,
            partNumber,
            unitPrice: part.sellsAt,
            unitCost: part.cost,
            priceFrom: part.sellsBy,
          };
    case 'typed':
      return { ...line, partNumber, priceFrom: 'bundle' };
    default:
      return { ...line, partNumber };
  }
}
