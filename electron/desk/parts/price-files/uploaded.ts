import { LARGEST_PRICE_FILE } from '../../../../shared/contract/parts/index.ts';
import { badInput } from '../../refuse.ts';
import { readUpload, type UploadedFile } from '../../uploaded-file.ts';

/**
 * A price file as it came over the contract.
 * @throws BAD_INPUT for half a file, and the declared FILE_TOO_LARGE
 */
export function uploadedPriceFile(
  base64: string,
  errors: { FILE_TOO_LARGE: () => Error },
): UploadedFile {
  const file = readUpload(base64);
  if (file === null || file.bytes.length === 0)
    throw badInput([
      { path: 'bytes', message: 'The file is empty or did not arrive whole. Choose it again.' },
    ]);
  if (file.bytes.length > LARGEST_PRICE_FILE) throw errors.FILE_TOO_LARGE();
  return file;
}
