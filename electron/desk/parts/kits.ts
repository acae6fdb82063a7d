import { eq } from 'drizzle-orm';
import { kitsAround, piecesOf } from '../../../db/queries/parts/kits.ts';
import { partNames } from '../../../db/queries/parts/names.ts';
import { needsOfJob } from '../../../db/queries/parts/needs.ts';
import { partById } from '../../../db/queries/parts/part.ts';
import { kitPiece } from '../../../db/schema/index.ts';
import type { KitPiece } from '../../../shared/contract/parts/index.ts';
import { kitShares } from '../../../shared/work/parts/kit-shares.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';
import { demandFree, issueToJob } from './issue.ts';
import { enterMovement } from './ledger.ts';

const setPieces = os.parts.setPieces.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, note }) => {
    const { kitId, pieces } = input;
    const kit = found(partById(store, kitId), 'part');
    const around = [kitId, ...kitsAround(store, kitId)];
    const looping = pieces.filter(({ partId }) => around.includes(partId));
    if (looping.length > 0)
      throw errors.KIT_LOOP({
        data: {
          numbers: partNames(
            store,
            looping.map(({ partId }) => partId),
          ).map(({ number }) => number),
        },
      });
    store.delete(kitPiece).where(eq(kitPiece.kitId, kitId)).run();
    for (const { partId, quantity } of pieces) {
      found(partById(store, partId), 'piece');
      store.insert(kitPiece).values({ kitId, partId, quantity }).run();
    }
    note({ part: kitId, number: kit.number, pieces: pieces.length });
    return piecesOf(store, kitId);
  }),
);

/** What of the pieces a job is to get; each has to come out of the kits that are opened. */
function demandPieces(
  toJob: readonly { partId: string; quantity: number }[],
  pieces: readonly KitPiece[],
  kits: number,
): void {
  const issues = toJob.flatMap(({ partId, quantity }, index) => {
    const piece = pieces.find(({ id }) => id === partId);
    if (piece === undefined)
      return [
        { path: `toJob.${index}.partId`, message: 'That piece doesn’t come out of this kit.' },
      ];
    return quantity > piece.quantity * kits
      ? [{ path: `toJob.${index}.quantity`, message: 'Fewer than that come out of these kits.' }]
      : [];
  });
  if (issues.length > 0) throw badInput(issues);
}

const openKit = os.parts.openKit.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, note } = writing;
    const { kitId, kits, without, jobId, toJob, reason } = input;
    const kit = found(partById(store, kitId), 'part');
    const all = piecesOf(store, kitId);
    if (all.length === 0) throw errors.NO_KIT();
    const pieces = all.filter(({ id }) => !without.includes(id));
    if (pieces.length === 0)
      throw badInput([{ path: 'without', message: 'Keep one piece at least, or scrap the kit.' }]);
    if (toJob.length > 0 && jobId === null)
      throw badInput([{ path: 'jobId', message: 'Say which job the pieces go to.' }]);
    demandPieces(toJob, pieces, kits);

    const quantity = kits * 1000;
    demandFree(writing, { part: kit, jobId, quantity, reason }, errors);
    const opened = { kind: 'kit-opened', jobId, reason } as const;
    const { effect } = enterMovement(writing, {
      ...opened,
      partId: kitId,
      difference: -quantity,
      cost: 0,
    });
    const shares = kitShares(
      -effect.worth,
      pieces.map(({ id, quantity: inOne }) => ({
        quantity: inOne * kits,
        unitCost: found(partById(store, id), 'piece').cost,
      })),
    );
    pieces.forEach(({ id, quantity: inOne }, index) => {
      enterMovement(writing, {
        ...opened,
        partId: id,
        difference: inOne * kits,
        cost: shares[index] ?? 0,
      });
    });
    if (jobId !== null) {
      const because = reason || `Out of ${kit.number}`;
      const ofKit = needsOfJob(store, jobId).has(kitId);
      for (const piece of toJob) {
        const part = found(partById(store, piece.partId), 'piece');
        issueToJob(
          writing,
          // Taken out for this job: it goes before those that wait for the same piece.
          { ...piece, part, jobId, reason: because, belowNothing: false, ofKit },
          errors,
        );
      }
    }
    note({ part: kitId, number: kit.number, kits, job: jobId, pieces: pieces.length });
    return found(partById(store, kitId), 'part');
  }),
);

export const kits = { setPieces, openKit };
