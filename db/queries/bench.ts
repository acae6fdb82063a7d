import { and, asc, desc, eq, inArray, isNull, lt, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/sqlite-core';
import type { Gauge, GaugeCheck, Reading } from '../../shared/contract/bench/index.ts';
import { GaugeId, ReadingId, SpecificationId } from '../../shared/contract/ids.ts';
import { gaugeUncertainty } from '../../shared/trade/index.ts';
import { calibrationOf } from '../../shared/work/bench/gauge-checks.ts';
import { LASH_POSITIONS } from '../../shared/work/bench/lash-position.ts';
import { prepared } from '../prepared.ts';
import { remembered } from '../remembered.ts';
import { gauge, holdPointEvent, job, reading, staff } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';
import { checksByGauge, checksOf, gaugeRemarks } from './gauge-checks.ts';

const asGauge = (
  row: typeof gauge.$inferSelect,
  checks: readonly GaugeCheck[],
  today: string,
): Gauge => {
  const calibration = calibrationOf(row, checks);
  const { calibrationDue } = calibration;
  return {
    ...row,
    ...calibration,
    id: GaugeId.parse(row.id),
    uncertainty: gaugeUncertainty({ resolution: row.resolution, maxError: row.maxError }),
    expired: calibrationDue !== null && calibrationDue < today,
  };
};

export function gaugeList(store: ReadStore, today: string): Gauge[] {
  const checks = checksByGauge(store);
  return store
    .select()
    .from(gauge)
    .orderBy(asc(gauge.name))
    .all()
    .map((row) => asGauge(row, checks.get(row.id) ?? [], today));
}

const gaugeRows = prepared((store) =>
  store
    .select()
    .from(gauge)
    .where(eq(gauge.id, sql.placeholder('id')))
    .prepare(),
);

export const gaugeRow = (store: ReadStore, id: string) => gaugeRows(store).get({ id });

export function gaugeById(store: ReadStore, id: string, today: string): Gauge | undefined {
  const row = gaugeRow(store, id);
  return row && asGauge(row, checksOf(store, id), today);
}

const readingRows = (store: ReadStore) =>
  store
    .select({ reading, gaugeName: gauge.name, byName: staff.name })
    .from(reading)
    .innerJoin(staff, eq(staff.id, reading.by))
    .leftJoin(gauge, eq(gauge.id, reading.gaugeId));

type ReadingRow = ReturnType<ReturnType<typeof readingRows>['all']>[number];

const asReading = (
  { reading: row, gaugeName, byName }: ReadingRow,
  superseded: boolean,
  gaugeRemark: string,
): Reading => ({
  id: ReadingId.parse(row.id),
  feature: row.feature,
  place: row.place,
  placeLabel: row.placeLabel,
  phase: row.phase,
  text: row.text,
  unit: row.unit,
  value: row.value,
  valueBase: row.valueBase,
  gauge: row.gaugeId === null ? null : { id: GaugeId.parse(row.gaugeId), name: gaugeName ?? '' },
  gaugeRemark,
  uncertaintyBase: row.uncertaintyBase,
  temperature: row.temperature,
  position: LASH_POSITIONS.find((position) => position === row.position) ?? null,
  verdict: row.verdict,
  conformance: row.conformance,
  questioned:
    row.slipKind === null || row.slipLikely === null
      ? null
      : { kind: row.slipKind, likely: row.slipLikely },
  specificationId: row.specificationId === null ? null : SpecificationId.parse(row.specificationId),
  low: row.low,
  high: row.high,
  by: byName,
  at: row.at,
  supersedes: row.supersedes === null ? null : ReadingId.parse(row.supersedes),
  superseded,
});

const rowsOfJob = prepared((store) =>
  readingRows(store)
    .where(eq(reading.jobId, sql.placeholder('jobId')))
    .orderBy(asc(reading.at), asc(reading.id))
    .prepare(),
);

/** A job's readings in the order in which they were taken, superseded ones among them. */
export const readingsOf = remembered((store, jobId): Reading[] => {
  const rows = rowsOfJob(store).all({ jobId });
  const superseded = new Set(rows.map((row) => row.reading.supersedes));
  const remarkOn = gaugeRemarks(
    store,
    rows.map((row) => row.reading),
  );
  return rows.map((row) => asReading(row, superseded.has(row.reading.id), remarkOn(row.reading)));
});

/** Every reading that a gauge ever took, newest first, with the job that it belongs to. */
export function readingsBy(store: ReadStore, gaugeId: string) {
  const rows = readingRows(store)
    .where(eq(reading.gaugeId, gaugeId))
    .orderBy(desc(reading.at), desc(reading.id))
    .all();
  const superseded = new Set(
    store
      .select({ id: reading.supersedes })
      .from(reading)
      .where(
        inArray(
          reading.supersedes,
          rows.map((row) => row.reading.id),
        ),
      )
      .all()
      .map(({ id }) => id),
  );
  const remarkOn = gaugeRemarks(
    store,
    rows.map((row) => row.reading),
  );
  return rows.map((row) => ({
    jobId: row.reading.jobId,
    reading: asReading(row, superseded.has(row.reading.id), remarkOn(row.reading)),
  }));
}

/** Readings that stand of the same engine from jobs taken in before this one, newest first. */
export const earlierReadings = (store: ReadStore, engineId: string, jobId: string) => {
  const thisJob = store.select({ number: job.number }).from(job).where(eq(job.id, jobId));
  const next = alias(reading, 'next');
  return store
    .select({
      feature: reading.feature,
      place: reading.place,
      phase: reading.phase,
      text: reading.text,
      unit: reading.unit,
      valueBase: reading.valueBase,
      at: reading.at,
      jobNumber: job.number,
    })
    .from(reading)
    .innerJoin(job, eq(job.id, reading.jobId))
    .leftJoin(next, eq(next.supersedes, reading.id))
    .where(and(eq(reading.engineId, engineId), lt(job.number, thisJob), isNull(next.id)))
    .orderBy(desc(reading.at), desc(reading.id))
    .all();
};

const eventsOfJob = prepared((store) =>
  store
    .select({
      key: holdPointEvent.key,
      outcome: holdPointEvent.outcome,
      reason: holdPointEvent.reason,
      detail: holdPointEvent.detail,
      by: staff.name,
      at: holdPointEvent.at,
    })
    .from(holdPointEvent)
    .innerJoin(staff, eq(staff.id, holdPointEvent.by))
    .where(eq(holdPointEvent.jobId, sql.placeholder('jobId')))
    .orderBy(asc(holdPointEvent.at), asc(holdPointEvent.id))
    .prepare(),
);

/** What happened to a job's hold points, oldest first. */
export const holdPointEventsOf = (store: ReadStore, jobId: string) =>
  eventsOfJob(store).all({ jobId });
