import { asc, eq } from 'drizzle-orm';
import { OtherNumberId } from '../../../shared/contract/ids.ts';
import type { NumberHit, OtherNumber } from '../../../shared/contract/parts/index.ts';
import { foldNumber } from '../../../shared/work/fold.ts';
import { otherNumber, part } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { matches } from '../search-text.ts';
import { currentOf } from './chain.ts';
import { partName } from './names.ts';
import { partById } from './part.ts';

/** In the order in which they were added. */
export const otherNumbersOf = (store: ReadStore, partId: string): OtherNumber[] =>
  store
    .select()
    .from(otherNumber)
    .where(eq(otherNumber.partId, partId))
    .orderBy(asc(otherNumber.id))
    .all()
    .map(({ id, kind, whose, number }) => ({ id: OtherNumberId.parse(id), kind, whose, number }));

export const otherNumberById = (store: ReadStore, id: string) =>
  store.select().from(otherNumber).where(eq(otherNumber.id, id)).get();

type Found = Pick<NumberHit, 'by' | 'whose'> & { partId: string };

const byOwn = (store: ReadStore, key: string): Found[] =>
  store
    .select({ partId: part.id })
    .from(part)
    .where(eq(part.numberKey, key))
    .all()
    .map((row) => ({ ...row, by: 'own', whose: '' }));

/** Barcodes are not folded in the store: what the search finds is compared here. */
const byBarcode = (store: ReadStore, key: string): Found[] =>
  store
    .select({ partId: part.id, barcode: part.barcode })
    .from(part)
    .where(matches(part.searchText, key))
    .orderBy(asc(part.number))
    .all()
    .filter(({ barcode }) => barcode !== '' && foldNumber(barcode) === key)
    .map(({ partId }) => ({ partId, by: 'barcode', whose: '' }));

const byOthers = (store: ReadStore, key: string): Found[] =>
  store
    .select({ partId: otherNumber.partId, by: otherNumber.kind, whose: otherNumber.whose })
    .from(otherNumber)
    .innerJoin(part, eq(part.id, otherNumber.partId))
    .where(eq(otherNumber.numberKey, key))
    .orderBy(asc(part.number), asc(otherNumber.id))
    .all();

/** The parts that have exactly this number; each once, by the best of its numbers. */
export function partsByNumber(store: ReadStore, number: string): NumberHit[] {
  const key = foldNumber(number);
  if (key === '') return [];
  const found = [...byOwn(store, key), ...byBarcode(store, key), ...byOthers(store, key)];
  const once = new Map(found.toReversed().map((each) => [each.partId, each]));
  return found
    .filter((each) => once.get(each.partId) === each)
    .flatMap(({ partId, by, whose }) => {
      const hit = partById(store, partId);
      if (hit === undefined) return [];
      const current = currentOf(store, partId);
      return [
        {
          part: hit,
          by,
          whose,
          current: current === partId ? null : (partName(store, current) ?? null),
        },
      ];
    });
}
