import { closeSync, openSync, readSync, statSync } from 'node:fs';
import { backUpFolder } from '../../../db/back-ups/folders.ts';
import { backUpsIn } from '../../../db/back-ups/list.ts';
import { LARGEST_PIECE } from '../../../shared/contract/back-ups.ts';
import { DAILY_KEPT } from '../../../shared/work/office/back-ups.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { bringBack } from './bring-back.ts';
import { checkBackUp } from './check.ts';
import { worksOf, workUnderWay } from './long-work.ts';
import { backUp } from './make.ts';
import { listedFile } from './source.ts';
import { sendBackUpPiece } from './uploads.ts';

const listed = os.office.backUps.handler(({ context: { store } }) => {
  const folder = backUpFolder(store.folder);
  const lastDaily = [...worksOf(store).values()].findLast(({ daily }) => daily);
  return {
    folder,
    files: backUpsIn(folder),
    dailyKept: DAILY_KEPT,
    dailyTrouble: lastDaily?.card.trouble?.message ?? null,
    underWay: workUnderWay(store)?.card ?? null,
  };
});

const longWork = os.office.longWork.handler(
  ({ input, context: { store } }) => found(worksOf(store).get(input.id), 'work').card,
);

const stopLongWork = os.office.stopLongWork.handler(({ input, context: { store } }) => {
  const work = found(worksOf(store).get(input.id), 'work');
  work.stopped = true;
  return work.card;
});

const readBackUpPiece = os.office.readBackUpPiece.handler(({ input, context: { store } }) => {
  const file = listedFile(store.folder, input.fileName);
  const { size } = statSync(file);
  const piece = Buffer.alloc(Math.max(0, Math.min(LARGEST_PIECE, size - input.at)));
  const handle = openSync(file, 'r');
  try {
    readSync(handle, piece, 0, piece.length, input.at);
  } finally {
    closeSync(handle);
  }
  return { bytes: piece.toString('base64'), size };
});

export const backUps = {
  backUp,
  backUps: listed,
  longWork,
  stopLongWork,
  readBackUpPiece,
  sendBackUpPiece,
  checkBackUp,
  bringBack,
};
