import { createHash } from 'node:crypto';

/** A file that somebody put in, as it came over the contract: base64. */
export interface UploadedFile {
  bytes: Buffer;
  /** Hexadecimal. */
  sha256: string;
  kind: 'application/pdf' | 'image/jpeg' | 'image/png' | 'image/webp' | null;
}

/** What kind of file it is by its first bytes: a name or a browser's word for it proves nothing. */
function kindOf(bytes: Buffer): UploadedFile['kind'] {
  const beginsWith = (text: string, at = 0) =>
    bytes.subarray(at, at + text.length).equals(Buffer.from(text, 'latin1'));
  if (beginsWith('%PDF-')) return 'application/pdf';
  if (beginsWith('\xff\xd8\xff')) return 'image/jpeg';
  if (beginsWith('\x89PNG\r\n\x1a\n')) return 'image/png';
  return beginsWith('RIFF') && beginsWith('WEBP', 8) ? 'image/webp' : null;
}

/** Null for text that isn't base64 throughout: half a file must not be taken for a whole one. */
export function readUpload(base64: string): UploadedFile | null {
  const bytes = Buffer.from(base64, 'base64');
  // Buffer skips what it can't read.
  if (bytes.toString('base64') !== base64) return null;
  return {
    bytes,
    sha256: createHash('sha256').update(bytes).digest('hex'),
    kind: kindOf(bytes),
  };
}
