import { LARGEST_PIECE } from '../../../shared/contract/back-ups.ts';
import type { UploadId } from '../../../shared/contract/ids.ts';
import { desk } from '../../common/desk.ts';
import { base64Of, bytesOf } from '../../common/file-bytes.ts';
import { saveFile } from '../../common/save-file.ts';

/** Takes note of how much has gone over, from 0 to 1; the signal ends it between two pieces. */
interface Transfer {
  onShare: (share: number) => void;
  signal: AbortSignal;
}

/** Keeps a back-up elsewhere: fetched piece by piece, then saved as any file. */
export async function saveBackUp(fileName: string, { onShare, signal }: Transfer): Promise<void> {
  const pieces: Blob[] = [];
  for (let at = 0; ; ) {
    signal.throwIfAborted();
    const { bytes, size } = await desk.office.readBackUpPiece({ fileName, at });
    // A blob may wait on the disk: a large store need not fit into memory.
    const piece = new Blob([bytesOf(bytes)]);
    pieces.push(piece);
    at += piece.size;
    onShare(at / Math.max(1, size));
    if (at >= size || piece.size === 0) break;
  }
  signal.throwIfAborted();
  saveFile(fileName, new Blob(pieces), 'application/vnd.sqlite3');
}

/** Hands a file that was chosen on this machine over to the desk, piece by piece. */
export async function sendBackUp(file: File, { onShare, signal }: Transfer): Promise<UploadId> {
  let upload: UploadId | null = null;
  for (let at = 0; at < file.size || upload === null; at += LARGEST_PIECE) {
    signal.throwIfAborted();
    const bytes = await base64Of(file.slice(at, at + LARGEST_PIECE));
    ({ upload } = await desk.office.sendBackUpPiece({ upload, at, bytes }));
    onShare(Math.min(1, (at + LARGEST_PIECE) / Math.max(1, file.size)));
  }
  return upload;
}
