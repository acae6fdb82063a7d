import type { FeatureReadings, ReadingLine } from './content.ts';
import { STYLE } from './furniture/ink.ts';
import { paragraph, section } from './furniture/paragraphs.ts';
import type { Block, Sheet } from './furniture/sheet.ts';
import { VERDICT_WORDS } from './furniture/signs.ts';
import { standingLine } from './furniture/standing.ts';
import { cell, type Row, table } from './furniture/table.ts';

/** One feature of the engine: where its specification comes from, its readings, what follows from them. */
export function featureReadings(sheet: Sheet, feature: FeatureReadings): Block {
  const heading = feature.phase.trim() ? `${feature.feature}, ${feature.phase}` : feature.feature;
  const blocks: Block[] = [
    { ...standingLine(sheet, feature), keepsNext: true },
    readingsTable(sheet, feature.readings),
  ];
  if (feature.derived.length > 0) {
    const values = feature.derived.map(({ name, value }) => `${name} ${value}`).join('   ·   ');
    const from = feature.readings.length === 1 ? 'From this reading' : 'From these readings';
    blocks.push(paragraph(sheet, `${from}:   ${values}`, STYLE.cellStrong));
  }
  return section(sheet, heading, blocks, { gap: 3, style: STYLE.subheading, level: 'H3' });
}

function readingsTable(sheet: Sheet, readings: ReadingLine[]): Block {
  return table(sheet, {
    columns: [
      { heading: 'Place', width: 0.99 },
      { heading: 'Reading', width: 0.72 },
      { heading: 'Verdict', width: 1.12 },
      { heading: 'Specification', width: 1.26 },
      { heading: 'Gauge, uncertainty', width: 1.21 },
      { heading: 'By, when', width: 1.24 },
    ],
    rows: readings.map((reading) => readingRow(sheet, reading)),
  });
}

function readingRow(sheet: Sheet, reading: ReadingLine): Row {
  return {
    cells: [
      cell(reading.place || '–'),
      {
        paragraphs: [
          { text: reading.asTyped, style: STYLE.cellStrong },
          { text: reading.converted, style: STYLE.cellSoft },
        ],
      },
      {
        paragraphs: [{ text: VERDICT_WORDS[reading.verdict], style: STYLE.cell }],
        sign: reading.verdict,
      },
      cell(reading.band || '–'),
      {
        paragraphs: [
          { text: reading.gauge || '–', style: STYLE.cell },
          { text: reading.uncertainty, style: STYLE.cellSoft },
        ],
      },
      {
        paragraphs: [
          { text: reading.by, style: STYLE.cell },
          { text: sheet.writing.instant(reading.at), style: STYLE.cellSoft },
        ],
      },
    ],
    remark: reading.remark,
  };
}
