import type { BenchSheet, FeatureOnSheet, Reading } from '../../../shared/contract/bench.ts';
import type { Shop } from '../../../shared/contract/office.ts';
import type { Specification } from '../../../shared/contract/specbook.ts';
import {
  display,
  displayNumber,
  toBase,
  type Unit,
  unitLabel,
} from '../../../shared/trade/index.ts';
import { FEATURE_UNITS } from '../../../shared/work/features.ts';
import { bandAt } from '../../../shared/work/reading-verdict.ts';
import { PHASE_LABELS, PHASES, type Phase } from '../../../shared/work/vocabulary.ts';
import type { FeatureReadings, ReadingLine } from '../../paper/content.ts';

/** Recorded clearances as they stand on the work order. */

/** The unit that the other half of the trade reads. */
const OTHER_UNIT: Partial<Record<Unit, Unit>> = {
  mm: 'in',
  um: 'thou',
  in: 'mm',
  thou: 'mm',
  N·m: 'lbf·ft',
  lbf·ft: 'N·m',
  lbf·in: 'N·m',
  kgf·m: 'N·m',
  kgf·cm: 'N·m',
  kPa: 'psi',
  psi: 'kPa',
  bar: 'psi',
};

/** Ordinary spaces on paper: a program that looks for `0.3 mm` finds it. */
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

const written = (base: number, unit: Unit): string => plain(display(base, unit));

/** As typed; the unit is added when it was not typed too. */
function asTyped({ text, unit }: Reading): string {
  const bare = /[\p{L}"°µ%]/u.test(text) === false;
  return bare ? `${text} ${unitLabel(unit)}` : text;
}

function converted({ valueBase, unit }: Reading, shop: Shop): string {
  const other = OTHER_UNIT[unit];
  return shop.bothUnits && other !== undefined ? written(valueBase, other) : '';
}

/** `0.2 to 0.4 mm, aim 0.3`, in the unit that the source prints. */
function bandWords(
  low: number | null,
  high: number | null,
  aim: number | null,
  unit: Unit,
): string {
  const label = unitLabel(unit);
  const figure = (base: number) => displayNumber(base, unit);
  if (low === null && high === null) return '';
  const limits =
    low !== null && high !== null
      ? `${figure(low)} to ${figure(high)} ${label}`
      : low !== null
        ? `at least ${figure(low)} ${label}`
        : `at most ${figure(high ?? 0)} ${label}`;
  return aim === null ? limits : `${limits}, aim ${figure(aim)}`;
}

/** What a source is called on paper: title, edition, page. */
export function sourceWords({ source, page }: Specification): string {
  return [source.title, source.edition, page && `page ${page}`].filter(Boolean).join(', ');
}

function remarkOf(reading: Reading, atPlace: readonly Reading[]): string {
  const questioned = reading.questioned
    ? `questioned (${reading.questioned.likely}?), kept as typed`
    : '';
  const former = atPlace.find(({ id }) => id === reading.supersedes);
  const corrected = former ? `corrects ${asTyped(former)}` : '';
  const warm = reading.temperature === null ? '' : `part at ${reading.temperature} °C`;
  return [questioned, reading.gaugeRemark, corrected, warm].filter(Boolean).join('; ');
}

function lineOf(
  reading: Reading,
  place: FeatureOnSheet['places'][number],
  specification: Specification | undefined,
  shop: Shop,
): ReadingLine {
  const unit = specification?.unit ?? reading.unit;
  return {
    place: reading.placeLabel,
    asTyped: asTyped(reading),
    converted: converted(reading, shop),
    // The band of the moment: the book may have moved on since.
    band: bandWords(
      reading.low,
      reading.high,
      bandAt(specification ?? null, place.share).aim,
      unit,
    ),
    gauge: reading.gauge?.name ?? '',
    uncertainty:
      reading.uncertaintyBase === 0
        ? ''
        : `±${uncertaintyWords(reading.uncertaintyBase, reading.unit)}`,
    verdict: reading.verdict,
    remark: remarkOf(reading, place.readings),
    by: reading.by,
    at: reading.at,
  };
}

/** Two figures are as many as an uncertainty has. */
function uncertaintyWords(base: number, unit: Unit): string {
  const value = Number((base / toBase(1, unit)).toPrecision(2));
  return `${value} ${unitLabel(unit)}`;
}

function derivedLines(sheet: BenchSheet, feature: FeatureOnSheet, phase: Phase) {
  const follows: Partial<Record<FeatureOnSheet['feature'], string[]>> = {
    bore: ['bore-taper', 'bore-out-of-round'],
    'piston-skirt': ['piston-clearance'],
    'rod-big-end': ['rod-clearance'],
  };
  const names = follows[feature.feature] ?? [];
  return sheet.derived
    .filter((value) => value.phase === phase && names.includes(value.feature))
    .map((value) => ({
      name: sheet.cylinders > 1 ? `${value.label}, cylinder ${value.cylinder}` : value.label,
      value: [
        written(value.value, FEATURE_UNITS[value.feature]),
        value.uncertainty > 0
          ? `±${uncertaintyWords(value.uncertainty, FEATURE_UNITS[value.feature])}`
          : '',
        value.verdict === 'no-band' ? '' : `(${value.verdict.replace('-', ' ')})`,
      ]
        .filter(Boolean)
        .join(' '),
    }));
}

/** Every reading that stands, by feature and phase, with the specification that it was held against. */
export function featureReadings(
  sheet: BenchSheet,
  specifications: readonly Specification[],
  shop: Shop,
): FeatureReadings[] {
  return sheet.features.flatMap((feature) =>
    PHASES.flatMap((phase): FeatureReadings[] => {
      const taken = feature.places.flatMap((place) =>
        place.readings
          .filter((reading) => reading.phase === phase && !reading.superseded)
          .map((reading) => ({ place, reading })),
      );
      const first = taken[0];
      if (first === undefined) return [];
      // The page names what the readings were held against, not what the book says today.
      const ids = [...new Set(taken.map(({ reading }) => reading.specificationId))];
      return ids.map((id): FeatureReadings => {
        const specification = specifications.find((each) => each.id === id);
        return {
          feature: feature.label,
          phase: PHASE_LABELS[phase],
          source: specification ? sourceWords(specification) : '',
          standing: specification?.standing ?? 'none',
          readings: taken
            .filter(({ reading }) => reading.specificationId === id)
            .map(({ place, reading }) => lineOf(reading, place, specification, shop)),
          derived: id === ids.at(-1) ? derivedLines(sheet, feature, phase) : [],
        };
      });
    }),
  );
}
