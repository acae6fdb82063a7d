import { count } from 'drizzle-orm';
import { makeReady } from '../../../db/back-ups/stage.ts';
import { BackUpTrouble } from '../../../db/back-ups/trouble.ts';
import { newId } from '../../../db/new-id.ts';
import { staffList } from '../../../db/queries/office.ts';
import { journal } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import { LongWorkId, type StaffId } from '../../../shared/contract/ids.ts';
import type { DeskContext } from '../context.ts';
import { os } from '../implementer.ts';
import { endReadings } from '../parts/price-files/readings.ts';
import { staffUnknown } from '../refuse.ts';
import { write } from '../writing.ts';
import { stageAndCheck } from './check.ts';
import { beginWork, outcomeOf, tellOf, type Work, workUnderWay } from './long-work.ts';
import { sourceFile } from './source.ts';
import { dropUploads } from './uploads.ts';

const entriesIn = (store: ReadStore): number =>
  store.select({ n: count() }).from(journal).get()?.n ?? 0;

interface Wanted {
  source: string;
  fileName: string;
  sha256: string;
  reason: string;
  by: StaffId;
  /** Null before the shop is set up: then it is an owner of the back-up's, who is known once it is read. */
  name: string | null;
  /** How many calls under way wait for this. */
  own: number;
}

async function exchangeStore(
  { store, now, alone }: DeskContext,
  wanted: Wanted,
  path: readonly string[],
  work: Work,
): Promise<void> {
  await endReadings(store);
  const { staged, contents } = await stageAndCheck(store, wanted.source, work);
  try {
    if (staged.sha256 !== wanted.sha256) throw new BackUpTrouble('FILE_CHANGED');
    const name = wanted.name ?? contents.owners.find(({ id }) => id === wanted.by)?.name;
    if (name === undefined) throw staffUnknown();
    if (wanted.name !== null)
      work.card.backUp = await store.copy(
        { at: now(), origin: 'before-bringing-back' },
        { copying: tellOf(work, 'keeping', 0, 0.5), checking: tellOf(work, 'keeping', 0.5, 1) },
      );
    tellOf(work, 'placing')(0);
    makeReady(store.folder, staged, store.migrations, {
      at: now().toISOString(),
      by: wanted.by,
      what: path.join('.'),
      detail: {
        file: wanted.fileName,
        sha256: wanted.sha256,
        owner: name,
        reason: wanted.reason,
        kept: work.card.backUp?.fileName ?? null,
      },
    });
    await alone(() => store.exchange(staged.file), wanted.own);
    dropUploads(store.folder);
  } finally {
    staged.drop();
  }
}

export const bringBack = os.office.bringBack.handler(async ({ input, context, errors, path }) => {
  const { store, now } = context;
  const { by, from, sha256, storeEntries, reason, wait } = input;
  if (workUnderWay(store)) throw errors.WORK_UNDER_WAY();
  const source = sourceFile(store.folder, from);
  const before = entriesIn(store.read);
  if (before !== storeEntries) throw errors.STORE_MOVED_ON();
  const isEmpty = before === 0 && staffList(store.read).length === 0;
  // What is about to go is the last thing that the copy of it tells.
  const name = isEmpty
    ? null
    : write(context, [...path, 'asked'], by, ({ staff, note }) => {
        if (staff.role !== 'owner') throw errors.OWNER_WANTED();
        note({ file: from.fileName, sha256, reason });
        return staff.name;
      });
  const release = store.hold();
  const wanted = { source, fileName: from.fileName, sha256, reason, by, name, own: wait ? 1 : 0 };
  const id = LongWorkId.parse(newId(now()));
  const work = beginWork(store, { id, kind: 'bring-back' }, (bringing) =>
    exchangeStore(context, wanted, path, bringing).finally(release),
  );
  return wait ? outcomeOf(work) : work.card;
});
