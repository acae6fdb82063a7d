import { appendFileSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { stageFolder } from '../../../db/back-ups/folders.ts';
import { beginsLikeStore } from '../../../db/identity.ts';
import { newId } from '../../../db/new-id.ts';
import { UploadId } from '../../../shared/contract/ids.ts';
import { os } from '../implementer.ts';
import { badInput } from '../refuse.ts';
import { workUnderWay } from './long-work.ts';

const END = '.upload';

const uploadFile = (dataFolder: string, id: UploadId): string =>
  join(stageFolder(dataFolder), `${id}${END}`);

/** The file that came in pieces; undefined when there is none, or another one was sent since. */
export function uploadedFile(dataFolder: string, id: UploadId): string | undefined {
  const file = uploadFile(dataFolder, id);
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
}

/** There is one at a time, and none once it was brought back. */
export function dropUploads(dataFolder: string): void {
  const folder = stageFolder(dataFolder);
  mkdirSync(folder, { recursive: true });
  for (const name of readdirSync(folder)) if (name.endsWith(END)) rmSync(join(folder, name));
}

export const sendBackUpPiece = os.office.sendBackUpPiece.handler(
  ({ input, context: { store, now }, errors }) => {
    const bytes = Buffer.from(input.bytes, 'base64');
    if (bytes.length === 0)
      throw badInput([{ path: 'bytes', message: 'The file is empty. Choose another.' }]);
    if (input.upload === null) {
      // Told by its first bytes, before the rest of a large file is sent for nothing.
      if (workUnderWay(store)) throw errors.WORK_UNDER_WAY();
      if (input.at !== 0 || !beginsLikeStore(bytes)) throw errors.NOT_OURS();
      dropUploads(store.folder);
      const upload = UploadId.parse(newId(now()));
      keep(uploadFile(store.folder, upload), bytes);
      return { upload };
    }
    const file = uploadedFile(store.folder, input.upload);
    if (file === undefined || statSync(file).size !== input.at) throw errors.PIECE_MISSING();
    keep(file, bytes);
    return { upload: input.upload };
  },
);

/** A disk that is full or failing is told by the error; nothing of the file is left then. */
function keep(file: string, bytes: Buffer): void {
  try {
    appendFileSync(file, bytes);
  } catch (error) {
    rmSync(file, { force: true });
    throw error;
  }
}
