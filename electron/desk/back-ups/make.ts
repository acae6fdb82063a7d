import { backUpFolder } from '../../../db/back-ups/folders.ts';
import { backUpsIn } from '../../../db/back-ups/list.ts';
import { newId } from '../../../db/new-id.ts';
import { shopOf, staffList } from '../../../db/queries/office.ts';
import { LongWorkId } from '../../../shared/contract/ids.ts';
import { dateIn } from '../../../shared/work/calendar.ts';
import type { BackUpOrigin } from '../../../shared/work/office/back-ups.ts';
import type { DeskContext } from '../context.ts';
import { os } from '../implementer.ts';
import { write } from '../writing.ts';
import { beginWork, outcomeOf, tellOf, type Work, workUnderWay } from './long-work.ts';

function beginCopy({ store, now }: DeskContext, origin: BackUpOrigin): Work {
  const at = now();
  const what = {
    id: LongWorkId.parse(newId(at)),
    kind: 'back-up',
    daily: origin === 'daily',
  } as const;
  return beginWork(store, what, async (work) => {
    work.card.backUp = await store.copy(
      { at, origin },
      { copying: tellOf(work, 'copying'), checking: tellOf(work, 'checking') },
    );
  });
}

export const backUp = os.office.backUp.handler(async ({ input, context, errors, path }) => {
  if (workUnderWay(context.store)) throw errors.WORK_UNDER_WAY();
  // The entry comes first, so that the copy tells of itself.
  write(context, path, input.by, ({ note }) => note({}));
  const work = beginCopy(context, 'by-hand');
  return input.wait ? outcomeOf(work) : work.card;
});

/** An invented shop loses nothing, and a store without a shop has nothing to lose. */
function dailyIsDue({ store, now }: DeskContext): boolean {
  const { demo, timeZone } = shopOf(store.read);
  if (demo || workUnderWay(store) || staffList(store.read).length === 0) return false;
  const today = dateIn(timeZone, now());
  return !backUpsIn(backUpFolder(store.folder)).some(
    ({ origin, at }) => origin === 'daily' && dateIn(timeZone, at) === today,
  );
}

/** Makes today's back-up unless it is there; why one failed is said where the back-ups are listed. */
export async function backUpDaily(context: DeskContext): Promise<void> {
  if (dailyIsDue(context)) await beginCopy(context, 'daily').ended;
}
