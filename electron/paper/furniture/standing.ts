import type { FeatureReadings, Standing } from '../content.ts';
import type { TextLine } from '../fonts/typesetter.ts';
import { INK, STYLE, WASH } from './ink.ts';
import { type Block, drawLines, heightOf, type Sheet } from './sheet.ts';

/** How far a specification can be relied on, in words; capitals where it cannot be without a look. */
export const STANDING_WORDS = {
  confirmed: 'Confirmed specification',
  'single-source': 'SINGLE-SOURCE SPECIFICATION, no second source',
  unconfirmed: 'UNCONFIRMED SPECIFICATION, do not rely on it without checking',
  none: 'No specification: readings recorded without a limit',
} satisfies Record<Standing, string>;

const PAD = 5;
const ABOVE = 2.2;
const GAP = 10;

/**
 * A feature's band across the table: its name and limits, below them where these come from and how far
 * they are confirmed. Anything short of confirmed stands in a frame, so that nobody reads the figures
 * without seeing it.
 * @param limits that all of its readings are held to; empty when they differ or there are none
 */
export function featureBand(
  sheet: Sheet,
  { feature, source, standing }: FeatureReadings,
  limits: string,
): Block {
  const inner = sheet.width - PAD * 2;
  const relied = standing === 'confirmed' || standing === 'none';
  const name = sheet.lines(feature, STYLE.strong, inner * 0.5);
  const shift = lineWidth(name) + GAP;
  const held = sheet.lines(limits, STYLE.text, inner - shift);
  const first = Math.max(heightOf(name), heightOf(held));
  const origin = source.trim() === '' ? 'No source recorded' : source;
  const from = standing === 'none' ? [] : sheet.lines(origin, STYLE.soft, inner);
  const words = STANDING_WORDS[standing];
  const style = relied ? STYLE.soft : STYLE.cellStrong;
  const level =
    from.length === 1 && lineWidth(from) + GAP + sheet.type.widthOf(words, style) <= inner;
  const said = sheet.lines(words, style, inner);
  const second = level ? Math.max(heightOf(from), heightOf(said)) : heightOf(from) + heightOf(said);
  const height = ABOVE * 2 + first + second;
  return {
    lead: height,
    height,
    draw: () => {
      const { left, width, y } = sheet;
      sheet.structure.artifact(() => {
        sheet.document.rect(left, y, width, height).fill(WASH);
        if (relied) return;
        sheet.document
          .lineWidth(standing === 'unconfirmed' ? 1.2 : 0.6)
          .rect(left, y, width, height)
          .stroke(INK);
      });
      const top = y + ABOVE;
      const below = top + first;
      sheet.structure.group('TR', () => {
        sheet.structure.text('TH', () => drawLines(sheet, name, left + PAD, top));
        sheet.structure.text('TD', () => {
          drawLines(sheet, held, left + PAD + shift, top);
          drawLines(sheet, from, left + PAD, below);
          if (level) drawLines(sheet, said, left + width - PAD, below, 'right');
          else drawLines(sheet, said, left + PAD, below + heightOf(from));
        });
      });
      sheet.y += height;
    },
  };
}

function lineWidth(lines: TextLine[]): number {
  return Math.max(0, ...lines.map(({ width }) => width));
}

/** Says at the head of a further page which feature goes on there, and what holds for it. */
export function continuedBand(
  sheet: Sheet,
  { feature, standing }: FeatureReadings,
  limits: string,
): Block {
  const inner = sheet.width - PAD * 2;
  const name = sheet.lines(`${feature}, continued`, STYLE.strong, inner * 0.5);
  const held = sheet.lines(limits, STYLE.text, inner - lineWidth(name) - GAP);
  const relied = standing === 'confirmed' || standing === 'none';
  const said = relied ? [] : sheet.lines(STANDING_WORDS[standing], STYLE.cellStrong, inner);
  const first = Math.max(heightOf(name), heightOf(held));
  const height = ABOVE * 2 + first + heightOf(said);
  return {
    lead: height,
    height,
    draw: () => {
      const { left, width, y } = sheet;
      sheet.structure.artifact(() => {
        sheet.document.rect(left, y, width, height).fill(WASH);
        drawLines(sheet, name, left + PAD, y + ABOVE);
        drawLines(sheet, held, left + PAD + lineWidth(name) + GAP, y + ABOVE);
        drawLines(sheet, said, left + PAD, y + ABOVE + first);
      }, 'Pagination');
      sheet.y += height;
    },
  };
}
