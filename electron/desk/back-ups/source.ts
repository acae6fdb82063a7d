import { join } from 'node:path';
import { backUpFolder } from '../../../db/back-ups/folders.ts';
import { backUpsIn } from '../../../db/back-ups/list.ts';
import type { BackUpSource } from '../../../shared/contract/back-ups.ts';
import { found } from '../refuse.ts';
import { uploadedFile } from './uploads.ts';

/** A file of the list by its name: only what is in the list, so that no name leads out of the folder. */
export function listedFile(dataFolder: string, fileName: string): string {
  const folder = backUpFolder(dataFolder);
  const listed = backUpsIn(folder).find((each) => each.fileName === fileName);
  return join(folder, found(listed, 'back-up').fileName);
}

/** @throws NOT_FOUND */
export function sourceFile(dataFolder: string, { fileName, upload }: BackUpSource): string {
  if (upload === null) return listedFile(dataFolder, fileName);
  return found(uploadedFile(dataFolder, upload), 'file that was sent');
}
