import { z } from 'zod';

/** A work order with many photos stays far below this. */
const largestPaper = 64 * 1024 * 1024;

/** The bytes of a PDF as the page hands them over. */
export const PaperBytes = z
  .instanceof(Uint8Array)
  .refine((bytes) => bytes.byteLength <= largestPaper, 'This paper is too large.')
  .refine(
    (bytes) => new TextDecoder('latin1').decode(bytes.subarray(0, 5)) === '%PDF-',
    'This is not a PDF.',
  );

/** A file name without a folder, such as every system takes; it always ends in .pdf. */
export const PaperFileName = z.string().max(200).transform(plainFileName);

function plainFileName(given: string): string {
  const stem = given
    .normalize('NFC')
    .replace(/\.pdf$/i, '')
    .replace(/[\p{Cc}<>:"/\\|?*]/gu, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[. ]+|[. ]+$/g, '');
  // Windows keeps these names for devices, whatever their extension.
  const reserved = /^(con|prn|aux|nul|com\d|lpt\d)$/i.test(stem);
  return `${stem === '' || reserved ? 'paper' : stem}.pdf`;
}
