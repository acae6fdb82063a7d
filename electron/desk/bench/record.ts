import { gaugeById, readingsOf } from '../../../db/queries/bench.ts';
import { sizesOfJob } from '../../../db/queries/decisions.ts';
import { reading as readingTable } from '../../../db/schema/index.ts';
import type { Reading } from '../../../shared/contract/bench/index.ts';
import { SPECIFICATION_UNITS } from '../../../shared/contract/specbook.ts';
import {
  convert,
  dimensionOf,
  parseReading,
  type SlipKind,
  type Unit,
  unitLabel,
} from '../../../shared/trade/index.ts';
import {
  limitsInPhase,
  limitsOfPlace,
} from '../../../shared/work/bench/deciding/decided-limits.ts';
import { gaugeRemark, uncertaintyInBase } from '../../../shared/work/bench/gauge-remark.ts';
import { wantsPosition } from '../../../shared/work/bench/lash-position.ts';
import { whyImpossible } from '../../../shared/work/bench/possible-reading.ts';
import { acceptedBand, limitsAt, verdictOn } from '../../../shared/work/bench/reading-verdict.ts';
import { suspicionOf } from '../../../shared/work/bench/suspicion.ts';
import { FEATURE_UNITS, placesOf } from '../../../shared/work/features.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { bookOf } from './book.ts';

type BookUnit = (typeof SPECIFICATION_UNITS)[number];

const isBookUnit = (unit: Unit): unit is BookUnit =>
  SPECIFICATION_UNITS.some((known) => known === unit);

function read(
  text: string,
  unit: BookUnit,
): { value: number; unit: BookUnit } | { reason: string } {
  try {
    const parsed = parseReading(text, unit);
    return isBookUnit(parsed.unit)
      ? { value: parsed.value, unit: parsed.unit }
      : { reason: `${unitLabel(parsed.unit)} is not a unit for this.` };
  } catch (error) {
    if (error instanceof RangeError) return { reason: error.message };
    throw error;
  }
}

type ReadingInput = Parameters<Parameters<typeof os.bench.record.handler>[0]>[0]['input'];

/** What may be refused of a reading; the calling procedure makes its own declared errors of it. */
export interface ReadingRefusals {
  JOB_CLOSED: () => Error;
  PLACE_UNKNOWN: (more: { data: { places: string[] } }) => Error;
  READING_UNREADABLE: (more: { data: { reason: string } }) => Error;
  READING_QUESTIONED: (more: {
    data: { kind: SlipKind; likely: number; unit: BookUnit; against: 'band' | 'pair' };
  }) => Error;
  /** Only of what depends on where the engine stands. */
  POSITION_WANTED?: () => Error;
  SUPERSEDED_ALREADY: () => Error;
}

/** Enters a reading within a transaction, with its verdict; whoever finishes a torque stage does so too. */
export function enterReading(
  { store, staff, at, today, newId, note }: Writing,
  input: Omit<ReadingInput, 'by' | 'position'> & Partial<Pick<ReadingInput, 'position'>>,
  errors: ReadingRefusals,
): Reading {
  const { job, specifications, shape } = bookOf(store, input.jobId);
  if (job.state === 'handed-over') throw errors.JOB_CLOSED();

  const places = placesOf(input.feature, shape);
  const place = places.find(({ key }) => key === input.place);
  if (place === undefined)
    throw errors.PLACE_UNKNOWN({ data: { places: places.map(({ key }) => key) } });

  const position = wantsPosition(input.feature) ? (input.position ?? null) : null;
  if (position === null && wantsPosition(input.feature) && errors.POSITION_WANTED !== undefined)
    throw errors.POSITION_WANTED();

  const baseUnit = FEATURE_UNITS[input.feature];
  if (dimensionOf(input.unit) !== dimensionOf(baseUnit))
    throw badInput([{ path: 'unit', message: `This is measured in ${baseUnit} or the like.` }]);
  const parsed = read(input.text, input.unit);
  if ('reason' in parsed) throw errors.READING_UNREADABLE({ data: parsed });
  const valueBase = convert(parsed.value, parsed.unit, baseUnit);
  const impossible = whyImpossible(input.feature, valueBase);
  if (impossible !== null) throw errors.READING_UNREADABLE({ data: { reason: impossible } });

  const specification = specifications.find(({ feature }) => feature === input.feature) ?? null;
  const limits = limitsOfPlace(
    input.feature,
    place.cylinder,
    limitsAt(specification, place.share),
    sizesOfJob(store, { engineId: job.machineDetails.engine.id, jobId: input.jobId }),
  );
  const band = acceptedBand(input.feature, limitsInPhase(limits, input.phase), input.phase);
  const before = readingsOf(store, input.jobId);
  const { slip, against } = suspicionOf({
    feature: input.feature,
    value: valueBase,
    band,
    place,
    places,
    phase: input.phase,
    readings: before,
  });
  const likely = slip && convert(slip.likely, baseUnit, parsed.unit);
  if (slip !== null && likely !== null && !input.keepAsTyped)
    throw errors.READING_QUESTIONED({
      data: { kind: slip.kind, likely: Number(likely.toPrecision(6)), unit: parsed.unit, against },
    });

  const gauge =
    input.gaugeId === null ? null : found(gaugeById(store, input.gaugeId, today), 'gauge');
  if (gauge !== null && dimensionOf(gauge.unit) !== dimensionOf(baseUnit))
    throw badInput([
      { path: 'gaugeId', message: `${gauge.name} does not measure this. Choose another gauge.` },
    ]);

  if (input.supersedes !== null) {
    const old = found(
      before.find(({ id }) => id === input.supersedes),
      'reading',
    );
    if (old.superseded) throw errors.SUPERSEDED_ALREADY();
    if (old.feature !== input.feature || old.place !== input.place || old.phase !== input.phase)
      throw badInput([
        {
          path: 'supersedes',
          message: 'A correction is of the same feature, place and phase as what it corrects.',
        },
      ]);
  }

  const uncertaintyBase = uncertaintyInBase(gauge);
  const id = newId();
  store
    .insert(readingTable)
    .values({
      id,
      jobId: job.id,
      engineId: job.machineDetails.engine.id,
      feature: input.feature,
      place: place.key,
      placeLabel: place.label,
      phase: input.phase,
      text: input.text,
      unit: parsed.unit,
      value: parsed.value,
      valueBase,
      gaugeId: gauge?.id ?? null,
      gaugeRemark: gaugeRemark(gauge, valueBase, baseUnit),
      uncertaintyBase,
      temperature: input.temperature,
      position,
      specificationId: specification?.id ?? null,
      low: band.low,
      high: band.high,
      ...verdictOn(valueBase, band, uncertaintyBase),
      slipKind: slip?.kind ?? null,
      slipLikely: likely,
      by: staff.id,
      at,
      supersedes: input.supersedes,
    })
    .run();
  note({
    job: job.id,
    reading: id,
    feature: input.feature,
    place: place.key,
    text: input.text,
    unit: parsed.unit,
    supersedes: input.supersedes,
  });
  return found(
    readingsOf(store, job.id).find((reading) => reading.id === id),
    'reading',
  );
}

export const record = os.bench.record.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => enterReading(writing, input, errors)),
);
