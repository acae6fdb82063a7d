import type { DecisionLine, FindingLine, PhotoLine } from './content.ts';
import { STYLE } from './furniture/ink.ts';
import { paragraph, section } from './furniture/paragraphs.ts';
import type { Block, Sheet } from './furniture/sheet.ts';
import { table } from './furniture/table.ts';
import { cell } from './furniture/table-rows.ts';

const FINDING_SIGNS = {
  sound: 'within',
  'wants-work': 'outside',
  'not-tried': 'no-band',
} as const satisfies Record<FindingLine['outcome'], string>;

/** What the diagnosis found: what is sound in one line, the rest a row each; nothing when nothing was noted. */
export function findings(sheet: Sheet, lines: FindingLine[]): Block[] {
  const last = lines.at(-1);
  if (last === undefined) return [];
  const who = ({ by, at }: FindingLine) => `${by}, ${sheet.writing.instant(at)}`;
  const oneLooked = lines.every(({ by }) => by === last.by);
  const sound = lines.filter(({ outcome }) => outcome === 'sound');
  const rest = lines.filter(({ outcome }) => outcome !== 'sound');
  const inBrief = (line: FindingLine) => line.seen.split('\n').join('. ');
  const soundWords = sound.map((line) =>
    [line.check, line.seen && `(${inBrief(line)})`, !oneLooked && who(line)]
      .filter(Boolean)
      .join(' '),
  );
  const blocks = [
    ...(rest.length === 0
      ? []
      : [
          table(sheet, {
            pad: 2,
            columns: [
              { heading: 'Looked at', width: 'fit' },
              { heading: 'Found', width: 'fit' },
              { heading: 'What was seen', width: 1 },
              ...(oneLooked ? [] : [{ heading: 'By', width: 'fit' } as const]),
            ],
            rows: rest.map((line) => ({
              cells: [
                cell(line.check),
                {
                  paragraphs: [{ text: line.found, style: STYLE.cell }],
                  sign: FINDING_SIGNS[line.outcome],
                },
                cell(inBrief(line) || '–'),
                ...(oneLooked ? [] : [cell(who(line))]),
              ],
            })),
          }),
        ]),
    ...(sound.length === 0
      ? []
      : [paragraph(sheet, `Sound: ${soundWords.join('; ')}.`, STYLE.cell)]),
  ];
  return [section(sheet, 'Found at diagnosis', blocks, oneLooked ? { aside: who(last) } : {})];
}

/** What was decided on each part, and why; nothing when nothing was. */
export function decisions(sheet: Sheet, lines: DecisionLine[]): Block[] {
  if (lines.length === 0) return [];
  const block = table(sheet, {
    pad: 2,
    columns: [
      { heading: 'Part', width: 1 },
      { heading: 'Decision', width: 1.2 },
      { heading: 'Machine to', width: 'fit' },
      { heading: 'By', width: 'fit' },
      { heading: 'When', width: 'fit' },
    ],
    rows: lines.map((line) => ({
      cells: [
        cell(line.part),
        cell(line.choice, STYLE.cellStrong),
        {
          paragraphs: (line.machineTo || '–')
            .split('\n')
            .map((text, index) => ({ text, style: index === 0 ? STYLE.cell : STYLE.cellSoft })),
        },
        cell(line.by),
        cell(sheet.writing.instant(line.at)),
      ],
      remark: line.reason && `Reason: ${line.reason}`,
    })),
  });
  return [section(sheet, 'Decided after stripping and measuring', [block])];
}

/** How many characters of a photo's SHA-256 are enough to tell it from the shop's other ones. */
const SHORT = 12;

/** The photos that the shop keeps of the job; nothing when there are none. */
export function photosOnRecord(sheet: Sheet, lines: PhotoLine[]): Block[] {
  if (lines.length === 0) return [];
  const block = table(sheet, {
    pad: 2,
    columns: [
      { heading: 'Photo', width: 1 },
      { heading: 'Taken by', width: 'fit' },
      { heading: 'When', width: 'fit' },
      { heading: 'SHA-256 begins', width: 'fit' },
    ],
    rows: lines.map((line) => ({
      cells: [
        cell([line.shows, line.caption].filter(Boolean).join(': ')),
        cell(line.by),
        cell(sheet.writing.instant(line.at)),
        cell(line.fingerprint.slice(0, SHORT), STYLE.cellSoft),
      ],
    })),
  });
  const kept = paragraph(
    sheet,
    'The shop keeps these pictures unchanged and shows them on request.',
    STYLE.soft,
  );
  return [section(sheet, 'Photos on record', [{ ...block, endKeepsNext: true }, kept])];
}
