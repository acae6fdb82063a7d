import { LARGEST_PHOTO } from '../../shared/contract/bench/index.ts';
import { readUpload } from './uploaded-file.ts';

interface PhotoRefusals {
  NOT_A_PHOTO: () => Error;
  PHOTO_TOO_LARGE: () => Error;
}

/** An uploaded photo as it is kept: its bytes, their hash, and what kind of picture they are. */
export function readPhoto(base64: string, errors: PhotoRefusals) {
  const upload = readUpload(base64);
  if (upload === null) throw errors.NOT_A_PHOTO();
  const { bytes, sha256, kind } = upload;
  if (bytes.length > LARGEST_PHOTO) throw errors.PHOTO_TOO_LARGE();
  if (kind === null || kind === 'application/pdf') throw errors.NOT_A_PHOTO();
  return { bytes, sha256, mediaType: kind };
}
