import { eq } from 'drizzle-orm';
import type { PartDossier } from '../../../shared/contract/parts/index.ts';
import { part } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { chainOf, formerOf } from './chain.ts';
import { fitsOf } from './fits.ts';
import { kitsWith, piecesOf } from './kits.ts';
import { movementsOf } from './movements.ts';
import { partName, partNames } from './names.ts';
import { otherNumbersOf } from './numbers.ts';
import { partById } from './part.ts';
import { photosOfPart } from './photos.ts';

/** All that is known of one part. */
export function partDossierOf(store: ReadStore, partId: string): PartDossier | undefined {
  const known = partById(store, partId);
  if (known === undefined) return undefined;
  const next = store
    .select({ id: part.supersededBy })
    .from(part)
    .where(eq(part.id, partId))
    .get()?.id;
  const current = chainOf(store, partId).at(-1) ?? partId;
  return {
    part: known,
    movements: movementsOf(store, partId),
    numbers: otherNumbersOf(store, partId),
    supersededBy: next ? (partName(store, next) ?? null) : null,
    current: current === partId ? null : (partName(store, current) ?? null),
    former: partNames(store, formerOf(store, partId)),
    fits: fitsOf(store, partId),
    pieces: piecesOf(store, partId),
    inKits: kitsWith(store, partId),
    photos: photosOfPart(store, partId),
  };
}
