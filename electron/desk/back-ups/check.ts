import { checkStoreFile } from '../../../db/back-ups/check.ts';
import { type BackUpContents, readContents } from '../../../db/back-ups/contents.ts';
import { lostAgainst } from '../../../db/back-ups/lost.ts';
import { type StagedFile, stageFile } from '../../../db/back-ups/stage.ts';
import { BackUpTrouble } from '../../../db/back-ups/trouble.ts';
import { newId } from '../../../db/new-id.ts';
import { invoiceNumber } from '../../../db/queries/till/invoices.ts';
import type { Store } from '../../../db/store.ts';
import type { FoundBackUp } from '../../../shared/contract/back-ups.ts';
import { jobCode, LongWorkId, StaffId } from '../../../shared/contract/ids.ts';
import { readBackUpName } from '../../../shared/work/office/back-ups.ts';
import { os } from '../implementer.ts';
import { beginWork, outcomeOf, tellOf, type Work, workUnderWay } from './long-work.ts';
import { sourceFile } from './source.ts';

export interface Sound {
  staged: StagedFile;
  pending: number;
  journal: string[];
  contents: BackUpContents;
}

/**
 * Copies a file to where it could take the store's place, and reads it through there.
 * @throws what is wrong with it; nothing of it is left then
 */
export async function stageAndCheck(store: Store, source: string, work: Work): Promise<Sound> {
  const staged = await stageFile(store.folder, source, tellOf(work, 'copying'));
  try {
    const tell = tellOf(work, 'checking');
    const { pending, journal } = await checkStoreFile(staged.file, store.migrations, tell);
    const contents = await readContents(staged.file);
    if (contents.owners.length === 0) throw new BackUpTrouble('NO_SHOP');
    tell(1);
    return { staged, pending, journal, contents };
  } catch (error) {
    staged.drop();
    throw error;
  }
}

function foundIn(store: Store, fileName: string, sound: Sound): FoundBackUp {
  const { staged, pending, journal, contents } = sound;
  const { entries, entriesInCommon, ...lost } = lostAgainst(store.read, journal, contents);
  return {
    fileName,
    bytes: staged.bytes,
    sha256: staged.sha256,
    madeAt: readBackUpName(fileName)?.at ?? null,
    shop: contents.shop,
    demo: contents.demo,
    older: pending > 0,
    entries: journal.length,
    lastEntry: contents.lastEntry,
    owners: contents.owners.map(({ id, name }) => ({ id: StaffId.parse(id), name })),
    customers: contents.customers.size,
    jobs: contents.jobs.size,
    invoices: contents.invoices.size,
    lost: {
      ...lost,
      storeEntries: entries,
      entries: entries - entriesInCommon,
      sameShop: entriesInCommon > 0,
      jobs: lost.jobs.map(jobCode),
      invoices: lost.invoices.map(invoiceNumber),
    },
  };
}

export const checkBackUp = os.office.checkBackUp.handler(async ({ input, context, errors }) => {
  const { store, now } = context;
  const { from, wait } = input;
  if (workUnderWay(store)) throw errors.WORK_UNDER_WAY();
  const source = sourceFile(store.folder, from);
  const id = LongWorkId.parse(newId(now()));
  const work = beginWork(store, { id, kind: 'check' }, async (checking) => {
    const sound = await stageAndCheck(store, source, checking);
    checking.card.found = foundIn(store, from.fileName, sound);
    sound.staged.drop();
  });
  return wait ? outcomeOf(work) : work.card;
});
