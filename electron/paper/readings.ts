import { datesWritten } from '../../shared/work/dates-in-words.ts';
import type { DerivedLine, FeatureReadings, ReadingLine } from './content.ts';
import { STYLE } from './furniture/ink.ts';
import { lineBand } from './furniture/line-band.ts';
import { paragraph, section } from './furniture/paragraphs.ts';
import type { Block, Sheet } from './furniture/sheet.ts';
import { VERDICT_WORDS } from './furniture/signs.ts';
import { continuedBand, featureBand, STANDING_WORDS } from './furniture/standing.ts';
import { type Band, table } from './furniture/table.ts';
import { type Cell, cell, type Row } from './furniture/table-rows.ts';
import { gaugeLegend, numberedGauges } from './gauges.ts';

/** A feature of no more rows than this stands on one page. */
const WHOLE = 3;
const INDENT = 5;
const UNDER = INDENT + 8;

/** Everything that was measured under its own heading, with how to read it; nothing when there is nothing. */
export function recordedClearances(
  sheet: Sheet,
  content: { engineModel: string; features: FeatureReadings[] },
): Block[] {
  if (content.features.length === 0) return [];
  const explained = paragraph(
    sheet,
    'Readings stand as they were typed, ± is the error of the gauge (expanded uncertainty, k = 2), and the verdict allows for it: “too close to call” means that reading and limit lie nearer to each other than the gauge can tell apart. “Worn” lies beyond the limits of a new part.',
    STYLE.soft,
  );
  const model = content.engineModel.trim();
  const heading = model
    ? `Recorded clearances and settings, ${model}`
    : 'Recorded clearances and settings';
  const blocks = [{ ...explained, keepsNext: true }, ...measurementRecord(sheet, content.features)];
  return [section(sheet, heading, blocks)];
}

/** All that was measured, in one table: a band for each feature, its readings by phase below it. */
function measurementRecord(sheet: Sheet, features: FeatureReadings[]): Block[] {
  const gauges = numberedGauges(features);
  const converted = features.some(({ readings }) =>
    readings.some((reading) => reading.converted.trim() !== ''),
  );
  const record = table(sheet, {
    pad: 1.7,
    columns: [
      { heading: 'Phase, place', width: 1 },
      { heading: 'Reading', width: 'fit' },
      ...(converted ? [{ heading: '', width: 'fit' } as const] : []),
      { heading: 'Verdict', width: 'fit' },
      { heading: 'Gauge', width: 'fit' },
      { heading: 'Time', width: 'fit', align: 'right' },
    ],
    rows: features.flatMap((feature) => featureRows(sheet, feature, gauges, converted)),
  });
  return [{ ...record, endKeepsNext: true }, ...gaugeLegend(sheet, gauges)];
}

interface Setting {
  /** Whether the limits differ from reading to reading, and so stand in each row. */
  limitsInRows: boolean;
  gauges: Map<string, string>;
  /** Whether there is a column for the other unit. */
  converted: boolean;
}

function featureRows(
  sheet: Sheet,
  feature: FeatureReadings,
  gauges: Map<string, string>,
  converted: boolean,
): (Row | Band)[] {
  const bands = new Set(feature.readings.map(({ band }) => band));
  const [band = ''] = bands;
  const limitsInRows = bands.size > 1;
  const setting = { gauges, converted, limitsInRows };
  const groups = groupsOf(sheet, feature.readings);
  const limits = [limitsInRows ? '' : unbroken(band), feature.fastener]
    .filter(Boolean)
    .join('  ·  ');
  const again = continuedBand(sheet, feature, limits);
  const below = groups.flatMap((group, index) => {
    const last = groups.findLastIndex(({ phase }) => phase === group.phase) === index;
    const derived = last ? feature.derived.filter(({ phase }) => phase === group.phase) : [];
    const told = new Set(groups.slice(0, index).map(({ phase }) => phase));
    const earlier = feature.derived.filter(({ phase }) => told.has(phase));
    // Where a limit comes from is said once, with the first value that is held to it.
    const rows = derived.map((line, index) =>
      derivedRow(
        line,
        setting,
        [...earlier, ...derived.slice(0, index)].some(
          ({ source, standing, band }) =>
            source === line.source && standing === line.standing && band === line.band,
        ),
      ),
    );
    return groupRows(sheet, group, rows, again, setting);
  });
  const whole = below.length <= WHOLE;
  return [
    { band: featureBand(sheet, feature, limits), keepsNext: true },
    ...conflictBands(sheet, feature.conflicts),
    ...below.map((row, index) => {
      const end = index === below.length - 1;
      return { ...row, keepsNext: end ? false : whole || (row.keepsNext ?? false) };
    }),
  ];
}

/** What another source says, named and never averaged with the figures above it. */
const conflictBands = (sheet: Sheet, conflicts: readonly string[]): Band[] =>
  conflicts.map((conflict) => ({
    band: lineBand(
      sheet,
      [
        { text: 'SOURCES DISAGREE', style: STYLE.cellStrong },
        { text: `${conflict}. Not settled; judged by the source named above.`, style: STYLE.cell },
      ],
      { indent: INDENT, below: 1.5 },
    ),
    keepsNext: true,
  }));

/** Readings of one phase that one person took on one day. */
interface Group {
  phase: string;
  by: string;
  day: string;
  readings: ReadingLine[];
}

function groupsOf(sheet: Sheet, readings: ReadingLine[]): Group[] {
  const groups: Group[] = [];
  for (const reading of readings) {
    const { phase, by } = reading;
    const day = sheet.writing.day(reading.at);
    const open = groups.at(-1);
    if (open?.phase === phase && open.by === by && open.day === day) open.readings.push(reading);
    else groups.push({ phase, by, day, readings: [reading] });
  }
  return groups;
}

function groupRows(
  sheet: Sheet,
  group: Group,
  derived: Row[],
  again: Block,
  setting: Setting,
): (Row | Band)[] {
  const { phase, readings } = group;
  const who = [group.by, group.day].filter(Boolean).join(', ');
  const [only, ...others] = readings;
  const follows = derived.map((line, index) => ({
    ...line,
    keepsNext: index < derived.length - 1,
    resume: [again],
  }));
  if (only !== undefined && others.length === 0) {
    // A single reading has phase, person and day in its own row.
    const what = [phase, placeWords(only, setting)].filter(Boolean).join(', ');
    const paragraphs = [{ text: [what, who].filter(Boolean).join('  ·  '), style: STYLE.cell }];
    const row = readingRow(sheet, only, { paragraphs, indent: INDENT }, setting);
    return [{ ...row, keepsNext: follows.length > 0, resume: [again] }, ...follows];
  }
  const ofAll = datesWritten(remarkOfAll(readings), sheet.writing.date);
  const title = lineBand(
    sheet,
    [
      { text: phase, style: STYLE.cell },
      { text: [who, ofAll].filter(Boolean).join('  ·  '), style: STYLE.cellSoft },
    ],
    { indent: INDENT },
  );
  return [
    { band: title, keepsNext: true, resume: [again] },
    ...readings.map((each, index) => {
      const reading = ofAll === '' ? each : { ...each, remark: '' };
      const place = { ...cell(placeWords(reading, setting) || '–'), indent: UNDER };
      const left = readings.length - 1 - index;
      return {
        ...readingRow(sheet, reading, place, setting),
        // Neither the first nor the last of a group stands alone on a page.
        keepsNext: left > 0 ? index === 0 || left === 1 : follows.length > 0,
        resume: [again, title],
      };
    }),
    ...follows,
  ];
}

/** What was remarked on every reading of a group is said once, at its head. */
function remarkOfAll([first, ...others]: ReadingLine[]): string {
  const remark = first?.remark ?? '';
  return others.every((reading) => reading.remark === remark) ? remark : '';
}

/** The place, and its own limits if it has any. */
function placeWords({ place, band }: ReadingLine, { limitsInRows }: Setting): string {
  const limits = limitsInRows ? unbroken(band) : '';
  return [place, limits].filter((text) => text.trim() !== '').join(': ');
}

function readingRow(sheet: Sheet, reading: ReadingLine, place: Cell, setting: Setting): Row {
  const code = setting.gauges.get(reading.gauge) ?? '';
  return {
    cells: [
      place,
      cell(reading.asTyped, STYLE.cellStrong),
      ...(setting.converted ? [cell(reading.converted, STYLE.cellSoft)] : []),
      verdictCell(reading.verdict),
      cell(`${code} ${reading.uncertainty}`.trim() || '–'),
      cell(sheet.writing.time(reading.at), STYLE.cellSoft),
    ],
    remark: datesWritten(reading.remark, sheet.writing.date),
    remarkBeside: true,
  };
}

function derivedRow(line: DerivedLine, setting: Setting, sourceTold: boolean): Row {
  const words = [line.name, unbroken(line.band)].filter(Boolean).join(': ');
  const source = line.source.trim() === '' ? 'no source recorded' : line.source;
  return {
    cells: [
      { paragraphs: [{ text: words, style: STYLE.oblique }], indent: UNDER },
      cell(line.value, STYLE.cellStrong),
      ...(setting.converted ? [cell('')] : []),
      verdictCell(line.verdict),
      cell(line.uncertainty),
      cell(''),
    ],
    remark: [
      line.remark,
      line.standing === 'none' || sourceTold
        ? ''
        : `${source}  ·  ${STANDING_WORDS[line.standing]}`,
    ]
      .filter(Boolean)
      .join('; '),
  };
}

function verdictCell(verdict: ReadingLine['verdict']): Cell {
  return { paragraphs: [{ text: VERDICT_WORDS[verdict], style: STYLE.cell }], sign: verdict };
}

/** Limits keep their unit, and `aim 0.30` its word; a line may end behind a comma only. */
function unbroken(band: string): string {
  return band
    .split(', ')
    .map((part) => part.replaceAll(' ', '\u00a0'))
    .join(', ');
}
