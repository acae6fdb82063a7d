import type { PaperContent } from '../content.ts';
import { canonicalJson } from '../fingerprint.ts';
import type { Sheet } from './sheet.ts';

/** What the attached record is called: the paper's number, so that several can lie in one folder. */
export const recordName = (content: PaperContent): string => `${content.number}.json`;

/**
 * Attaches what the fingerprint is taken of to the PDF, so that whoever holds the paper can take it again
 * with any program that knows SHA-256, and needs neither this program nor the shop for it.
 */
export function attachRecord(sheet: Sheet, content: PaperContent) {
  sheet.attach(
    recordName(content),
    'application/json',
    canonicalJson(content),
    'All that is recorded on this paper. Its SHA-256 is the fingerprint.',
  );
}
