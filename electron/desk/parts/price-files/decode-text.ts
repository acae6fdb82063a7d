import { isUtf8 } from 'node:buffer';
import type { TextEncoding } from '../../../../shared/work/parts/price-file/words.ts';

/** As many bytes are looked at to tell an encoding that has no mark. */
const LOOKED_AT = 64 * 1024;

/** How the bytes of a text file stand for letters: by its mark, else by the bytes themselves. */
export function encodingOf(bytes: Buffer): TextEncoding {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) return 'utf-8';
  const wide = wideEncodingOf(bytes.subarray(0, LOOKED_AT));
  if (wide !== null) return wide;
  if (isUtf8(bytes)) return 'utf-8';
  return isDamagedUtf8(bytes) ? 'utf-8' : 'windows-1252';
}

/** In UTF-16, Latin text has a zero in every second byte. */
function wideEncodingOf(bytes: Buffer): 'utf-16le' | 'utf-16be' | null {
  const zeros = [0, 0];
  for (const [index, byte] of bytes.entries())
    if (byte === 0) zeros[index % 2] = (zeros[index % 2] ?? 0) + 1;
  const [even = 0, odd = 0] = zeros;
  const many = bytes.length / 5;
  if (odd > many && even < odd / 10) return 'utf-16le';
  return even > many && odd < even / 10 ? 'utf-16be' : null;
}

/** UTF-8 in which a few bytes were spoilt: letters of several bytes by far outnumber them. */
function isDamagedUtf8(bytes: Buffer): boolean {
  let damaged = 0;
  let letters = 0;
  for (const [letter] of bytes.toString('utf8').matchAll(/[^\0-\x7f]/gu)) {
    if (letter === '\ufffd') damaged += 1;
    else letters += 1;
  }
  return letters > damaged * 4;
}

/** The text without its byte-order mark; what can't be read in the encoding becomes U+FFFD. */
export const decodeText = (bytes: Buffer, encoding: TextEncoding): string =>
  new TextDecoder(encoding).decode(bytes);
