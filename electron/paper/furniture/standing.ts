import type { FeatureReadings } from '../content.ts';
import { INK, STYLE } from './ink.ts';
import { paragraph } from './paragraphs.ts';
import { type Block, drawLines, heightOf, type Sheet } from './sheet.ts';

/** How far a specification can be relied on, in words; capitals where it cannot be without a look. */
const STANDING_WORDS = {
  confirmed: 'Confirmed specification',
  'single-source': 'SINGLE-SOURCE SPECIFICATION, not checked against a second source',
  unconfirmed: 'UNCONFIRMED SPECIFICATION, do not rely on it without checking',
  none: 'No specification: readings recorded without a limit',
} satisfies Record<FeatureReadings['standing'], string>;

/**
 * Where a specification comes from and how far it is confirmed. Anything short of confirmed stands in a
 * frame, so that nobody reads the figures without seeing it.
 */
export function standingLine(sheet: Sheet, { source, standing }: FeatureReadings): Block {
  const origin = source.trim() === '' ? 'no source recorded' : source;
  if (standing === 'none') return paragraph(sheet, STANDING_WORDS.none, STYLE.soft);
  if (standing === 'confirmed') {
    return paragraph(sheet, `Source: ${origin}   ·   ${STANDING_WORDS.confirmed}`, STYLE.soft);
  }
  const pad = 5;
  const words = sheet.lines(STANDING_WORDS[standing], STYLE.cellStrong, sheet.width - pad * 2);
  const from = sheet.lines(`Source: ${origin}`, STYLE.soft, sheet.width - pad * 2);
  const height = heightOf(words) + heightOf(from) + pad * 2;
  return {
    lead: height,
    height,
    draw: () => {
      sheet.structure.artifact(() => {
        sheet.document
          .lineWidth(standing === 'unconfirmed' ? 1.2 : 0.6)
          .rect(sheet.left, sheet.y, sheet.width, height)
          .stroke(INK);
      });
      sheet.structure.text('P', () => {
        drawLines(sheet, [...words, ...from], sheet.left + pad, sheet.y + pad);
      });
      sheet.y += height;
    },
  };
}
