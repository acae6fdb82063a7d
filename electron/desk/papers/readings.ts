import type {
  BenchSheet,
  DerivedOnSheet,
  FeatureOnSheet,
  Reading,
} from '../../../shared/contract/bench/index.ts';
import type { Shop } from '../../../shared/contract/office.ts';
import type { Specification } from '../../../shared/contract/specbook.ts';
import {
  display,
  displayNumber,
  toBase,
  type Unit,
  unitLabel,
} from '../../../shared/trade/index.ts';
import { withoutWear } from '../../../shared/work/bench/deciding/renewed-parts.ts';
import { endsOf, uncertaintyOf } from '../../../shared/work/bench/derived-verdict.ts';
import { LASH_POSITION_LABELS } from '../../../shared/work/bench/lash-position.ts';
import { likelyReading } from '../../../shared/work/bench/likely-reading.ts';
import { asTyped, otherUnit } from '../../../shared/work/bench/reading-in-words.ts';
import {
  acceptedBand,
  isWornButGood,
  limitsAt,
  WORN_BUT_GOOD,
} from '../../../shared/work/bench/reading-verdict.ts';
import { FEATURE_LABELS, FEATURE_UNITS } from '../../../shared/work/features.ts';
import { classWords, threadWords } from '../../../shared/work/specbook/fastener-words.ts';
import { wearLimitWords } from '../../../shared/work/specbook/wear-limit.ts';
import { PHASE_LABELS, PHASES, type Phase } from '../../../shared/work/vocabulary.ts';
import type { DerivedLine, FeatureReadings, ReadingLine } from '../../paper/content.ts';

/** Recorded clearances as they stand on the work order. */

/** Ordinary spaces on paper: a program that looks for `0.3 mm` finds it. */
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

const written = (base: number, unit: Unit): string => plain(display(base, unit));

function converted({ valueBase, unit }: Reading, shop: Shop): string {
  const other = otherUnit(unit);
  return shop.bothUnits && other !== undefined ? written(valueBase, other) : '';
}

/** `0.20 to 0.40 mm, aim 0.30, wear limit 0.50`: in the source's unit, as it prints them. */
function bandWords(
  specification: Specification | null,
  share: number,
  held: { low: number | null; high: number | null },
): string {
  if (specification === null) return '';
  const { unit } = specification;
  const { low, high, aim, wearLimit } = limitsAt(specification, share);
  // Trailing noughts say how exactly a source means it; a stage's share of it is our own figure.
  const figure = (base: number, printed: string) =>
    share === 1 && printed !== '' ? printed : displayNumber(base, unit);
  const lowWords = low === null ? '' : figure(low, specification.low);
  const highWords = high === null ? '' : figure(high, specification.high);
  const limits =
    low !== null && high !== null
      ? `${lowWords} to ${highWords} ${unitLabel(unit)}`
      : low !== null
        ? `at least ${lowWords} ${unitLabel(unit)}`
        : `at most ${highWords} ${unitLabel(unit)}`;
  const heldToWear = wearLimit !== null && (held.low === wearLimit || held.high === wearLimit);
  return [
    limits,
    aim === null ? '' : `aim ${figure(aim, specification.aim)}`,
    heldToWear
      ? `wear limit ${share === 1 ? wearLimitWords(specification) : displayNumber(wearLimit, unit)}`
      : '',
  ]
    .filter(Boolean)
    .join(', ');
}

/** What a source is called on paper: title, edition, page. */
function sourceWords({ source, page }: Pick<Specification, 'source' | 'page'>): string {
  return [source.title, source.edition, page && `page ${page}`].filter(Boolean).join(', ');
}

type Place = FeatureOnSheet['places'][number];

/** What a decision made of the limits, where the reading was held against that. */
function decidedAt(reading: Reading, { decided, came, renewed }: Place): Place['decided'] {
  const size = reading.phase === 'as-received' ? came : (decided ?? came);
  if (size === null || size.step === 0) return null;
  const moved = withoutWear(size, renewed, reading.phase);
  const { low, high } = acceptedBand(reading.feature, moved, reading.phase);
  return reading.low === low && reading.high === high ? moved : null;
}

/** `81.25 to 81.27 mm, wear limit 81.35, +0.25 mm decided`: no source prints these, they follow from it. */
function decidedWords(
  decided: NonNullable<Place['decided']>,
  unit: Unit,
  { feature, phase }: Pick<Reading, 'feature' | 'phase'>,
): string {
  const { low, high, wearLimit, step } = decided;
  const figure = (limit: number) => displayNumber(limit, unit);
  const limits =
    low !== null && high !== null
      ? `${figure(low)} to ${figure(high)}`
      : [
          low === null ? '' : `at least ${figure(low)}`,
          high === null ? '' : `at most ${figure(high)}`,
        ]
          .filter(Boolean)
          .join('');
  const held = acceptedBand(feature, decided, phase);
  return [
    `${limits} ${unitLabel(unit)}`,
    wearLimit !== null && (held.low === wearLimit || held.high === wearLimit)
      ? `wear limit ${displayNumber(wearLimit, unit)}`
      : '',
    `${step < 0 ? '−' : '+'}${written(Math.abs(step), 'mm')} decided`,
  ]
    .filter(Boolean)
    .join(', ');
}

function remarkOf(
  reading: Reading,
  place: FeatureOnSheet['places'][number],
  specification: Specification | undefined,
): string {
  const limits =
    decidedAt(reading, place) ??
    withoutWear(limitsAt(specification ?? null, place.share), place.renewed, reading.phase);
  const worn =
    reading.verdict === 'within' &&
    isWornButGood(reading.feature, reading.valueBase, limits, reading.phase)
      ? WORN_BUT_GOOD
      : '';
  const questioned = reading.questioned
    ? `questioned (${likelyReading(reading.questioned, reading.unit)}?), kept as typed`
    : '';
  const former = place.readings.find(({ id }) => id === reading.supersedes);
  const corrected = former ? `corrects ${plain(asTyped(former))}` : '';
  const warm = reading.temperature === null ? '' : `part at ${reading.temperature} °C`;
  const stood = reading.position === null ? '' : LASH_POSITION_LABELS[reading.position];
  return [worn, questioned, reading.gaugeRemark, corrected, warm, stood].filter(Boolean).join('; ');
}

function lineOf(
  reading: Reading,
  place: FeatureOnSheet['places'][number],
  specification: Specification | undefined,
  shop: Shop,
): ReadingLine {
  const decided = decidedAt(reading, place);
  return {
    phase: PHASE_LABELS[reading.phase],
    place: reading.placeLabel,
    asTyped: plain(asTyped(reading)),
    converted: converted(reading, shop),
    // The revision of the moment: the book may have moved on since.
    band:
      decided === null
        ? bandWords(specification ?? null, place.share, reading)
        : decidedWords(decided, specification?.unit ?? FEATURE_UNITS[reading.feature], reading),
    gauge: reading.gauge?.name ?? '',
    uncertainty:
      reading.uncertaintyBase === 0
        ? ''
        : `±${uncertaintyWords(reading.uncertaintyBase, reading.unit)}`,
    verdict: reading.verdict,
    remark: remarkOf(reading, place, specification),
    by: reading.by,
    at: reading.at,
  };
}

/** Two figures are as many as an uncertainty has. */
function uncertaintyWords(base: number, unit: Unit): string {
  const value = Number((base / toBase(1, unit)).toPrecision(2));
  return `${value} ${unitLabel(unit)}`;
}

/** What each measured feature leads to. */
const FOLLOWS: Partial<Record<FeatureOnSheet['feature'], DerivedOnSheet['feature'][]>> = {
  bore: ['bore-taper', 'bore-out-of-round', 'bore-wear', 'displacement'],
  'piston-skirt': ['piston-clearance'],
  crankpin: ['crankpin-out-of-round'],
  'rod-big-end': ['rod-clearance'],
  'main-journal': ['main-journal-out-of-round'],
  'chamber-volume': ['compression-ratio'],
  'valve-guide-intake': ['stem-clearance-intake'],
  'valve-guide-exhaust': ['stem-clearance-exhaust'],
  'valve-travel-intake': ['valve-lift-intake'],
  'valve-travel-exhaust': ['valve-lift-exhaust'],
};

/** Worked out of every rebuild; the others are printed where the spec book has figures for them. */
const ALWAYS_PRINTED: readonly DerivedOnSheet['feature'][] = [
  'bore-taper',
  'bore-out-of-round',
  'piston-clearance',
  'rod-clearance',
  'compression-ratio',
];

function derivedLine(value: DerivedOnSheet, cylinders: number): DerivedLine {
  const { specification, phase } = value;
  const uncertainty = uncertaintyOf(value);
  const unit = FEATURE_UNITS[value.feature];
  const limits = withoutWear(limitsAt(specification, 1), value.renewed, phase);
  const held = specification && acceptedBand(value.feature, limits, phase);
  return {
    phase: PHASE_LABELS[phase],
    name:
      cylinders > 1 && value.cylinder > 0
        ? `${value.label}, cylinder ${value.cylinder}`
        : value.label,
    value: endsOf(value)
      .map((end) => written(end, unit))
      .join(' to '),
    uncertainty: uncertainty > 0 ? `±${uncertaintyWords(uncertainty, unit)}` : '',
    band: held ? bandWords(specification, 1, held) : '',
    verdict: value.verdict,
    remark:
      value.verdict === 'within' &&
      endsOf(value).some((end) => isWornButGood(value.feature, end, limits, phase))
        ? WORN_BUT_GOOD
        : '',
    source: specification ? sourceWords(specification) : '',
    standing: specification?.standing ?? 'none',
  };
}

/** What is tightened, as the source prints its thread. */
function fastenerWords(specification: Specification | undefined): string {
  const fastener = specification?.fastener ?? null;
  if (fastener === null) return '';
  const { count, propertyClass } = fastener;
  return [count > 1 ? `${count} bolts` : '', threadWords(fastener), classWords(propertyClass)]
    .filter(Boolean)
    .join(', ');
}

/** The figures that other sources print against a specification, each with its source. */
const conflictWords = (specification: Specification | undefined, of: string): string[] =>
  (specification?.contradictions ?? []).map((other) => {
    const limits =
      other.low !== '' && other.high !== ''
        ? `${other.low} to ${other.high}`
        : other.low !== ''
          ? `at least ${other.low}`
          : `at most ${other.high}`;
    return `${of}${limits} ${unitLabel(other.unit)}, ${sourceWords(other)}`;
  });

/** Every reading that stands, by feature and by the specification that it was held against. */
export function featureReadings(
  sheet: BenchSheet,
  specifications: readonly Specification[],
  shop: Shop,
): FeatureReadings[] {
  return sheet.features.flatMap((feature) => {
    const taken = PHASES.flatMap((phase) =>
      feature.places.flatMap((place) =>
        place.readings
          .filter((reading) => reading.phase === phase && !reading.superseded)
          .map((reading) => ({ place, reading })),
      ),
    );
    const phases = new Set(taken.map(({ reading }) => reading.phase));
    const follows = FOLLOWS[feature.feature] ?? [];
    const derived = sheet.derived.filter(
      (value) =>
        follows.includes(value.feature) &&
        phases.has(value.phase) &&
        (value.specification !== null || ALWAYS_PRINTED.includes(value.feature)),
    );
    // The page names what the readings were held against, not what the book says today.
    const ids = [...new Set(taken.map(({ reading }) => reading.specificationId))];
    return ids.map((id): FeatureReadings => {
      const specification = specifications.find((each) => each.id === id);
      const held = taken.filter(({ reading }) => reading.specificationId === id);
      const lastOf = (phase: Phase) => taken.findLast(({ reading }) => reading.phase === phase);
      return {
        feature: feature.label,
        fastener: fastenerWords(specification),
        conflicts: [
          ...conflictWords(specification, ''),
          // Of what follows from the readings, the limit that is contested is named.
          ...[...new Set(derived.flatMap((value) => value.specification ?? []))].flatMap((own) =>
            conflictWords(own, `${FEATURE_LABELS[own.feature]}: `),
          ),
        ],
        source: specification ? sourceWords(specification) : '',
        standing: specification?.standing ?? 'none',
        readings: held.map(({ place, reading }) => lineOf(reading, place, specification, shop)),
        // A phase that was held against two specifications has what follows from it below the last.
        derived: derived
          .filter(({ phase }) => lastOf(phase)?.reading.specificationId === id)
          .map((value) => derivedLine(value, sheet.cylinders)),
      };
    });
  });
}
