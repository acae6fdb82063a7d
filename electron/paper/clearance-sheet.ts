import { decisions, photosOnRecord } from './bench-record.ts';
import type { ClearanceSheet } from './content.ts';
import { cautionBox } from './furniture/cautions.ts';
import { facts } from './furniture/facts.ts';
import { fullPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { paragraph } from './furniture/paragraphs.ts';
import { parties } from './furniture/parties.ts';
import { recordName } from './furniture/record-attached.ts';
import type { Block, Sheet } from './furniture/sheet.ts';
import { recordedClearances } from './readings.ts';

/** What was measured so far, by itself; it asks for no signature and closes nothing. */
export function drawClearanceSheet(content: ClearanceSheet, fingerprint: string): Uint8Array {
  return fullPages(content, fingerprint, (sheet) => [
    parties(sheet),
    ...runningHours(sheet, content),
    ...decisions(sheet, content.decisions),
    ...recordedClearances(sheet, content),
    ...photosOnRecord(sheet, content.photos),
    { ...cautionBox(sheet, content.cautions), keepsNext: true },
    paragraph(
      sheet,
      `This sheet shows the readings that stood when it was issued. The maker’s figures come before any printed here; a specification that is not confirmed says so above. It is no warranty and no invoice. At the foot of each page stands its fingerprint, the SHA-256 of ${recordName(content)}, attached to the PDF, which holds all that is recorded here: with one word or figure changed, it would be another.`,
      STYLE.soft,
    ),
  ]);
}

function runningHours(sheet: Sheet, { engineHours }: ClearanceSheet): Block[] {
  return engineHours === '' ? [] : [facts(sheet, [['Running hours at intake', engineHours]])];
}
