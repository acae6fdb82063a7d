import { asc, eq } from 'drizzle-orm';
import type { Gauge, Reading } from '../../shared/contract/bench/index.ts';
import { GaugeId, ReadingId, SpecificationId } from '../../shared/contract/ids.ts';
import { gaugeUncertainty } from '../../shared/trade/index.ts';
import { gauge, holdPointEvent, reading, staff } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';

const asGauge = (row: typeof gauge.$inferSelect, today: string): Gauge => ({
  ...row,
  id: GaugeId.parse(row.id),
  uncertainty: gaugeUncertainty({ resolution: row.resolution, maxError: row.maxError }),
  expired: row.calibrationDue !== null && row.calibrationDue < today,
});

export const gaugeList = (store: ReadStore, today: string): Gauge[] =>
  store
    .select()
    .from(gauge)
    .orderBy(asc(gauge.name))
    .all()
    .map((row) => asGauge(row, today));

export function gaugeById(store: ReadStore, id: string, today: string): Gauge | undefined {
  const row = store.select().from(gauge).where(eq(gauge.id, id)).get();
  return row && asGauge(row, today);
}

/** A job's readings in the order in which they were taken, superseded ones among them. */
export function readingsOf(store: ReadStore, jobId: string): Reading[] {
  const rows = store
    .select({ reading, gaugeName: gauge.name, byName: staff.name })
    .from(reading)
    .innerJoin(staff, eq(staff.id, reading.by))
    .leftJoin(gauge, eq(gauge.id, reading.gaugeId))
    .where(eq(reading.jobId, jobId))
    .orderBy(asc(reading.at), asc(reading.id))
    .all();
  const superseded = new Set(rows.map((row) => row.reading.supersedes));
  return rows.map(({ reading: row, gaugeName, byName }) => ({
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
    gaugeRemark: row.gaugeRemark,
    uncertaintyBase: row.uncertaintyBase,
    temperature: row.temperature,
    verdict: row.verdict,
    conformance: row.conformance,
    questioned:
      row.slipKind === null || row.slipLikely === null
        ? null
        : { kind: row.slipKind, likely: row.slipLikely },
    specificationId:
      row.specificationId === null ? null : SpecificationId.parse(row.specificationId),
    low: row.low,
    high: row.high,
    by: byName,
    at: row.at,
    supersedes: row.supersedes === null ? null : ReadingId.parse(row.supersedes),
    superseded: superseded.has(row.id),
  }));
}

/** What happened to a job's hold points, oldest first. */
export const holdPointEventsOf = (store: ReadStore, jobId: string) =>
  store
    .select({
      key: holdPointEvent.key,
      outcome: holdPointEvent.outcome,
      reason: holdPointEvent.reason,
      by: staff.name,
      at: holdPointEvent.at,
    })
    .from(holdPointEvent)
    .innerJoin(staff, eq(staff.id, holdPointEvent.by))
    .where(eq(holdPointEvent.jobId, jobId))
    .orderBy(asc(holdPointEvent.at), asc(holdPointEvent.id))
    .all();
