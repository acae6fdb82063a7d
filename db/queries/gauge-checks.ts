import { asc, eq, sql } from 'drizzle-orm';
import type { GaugeCheck } from '../../shared/contract/bench/index.ts';
import { type DoubtfulSpan, doubtfulSpans, inDoubt } from '../../shared/work/bench/gauge-checks.ts';
import { dateIn } from '../../shared/work/calendar.ts';
import { prepared } from '../prepared.ts';
import { gauge, gaugeCheck, staff } from '../schema/index.ts';
import type { ReadStore } from '../store.ts';
import { shopOf } from './office.ts';

const rows = (store: ReadStore) =>
  store
    .select({ check: gaugeCheck, byName: staff.name })
    .from(gaugeCheck)
    .innerJoin(staff, eq(staff.id, gaugeCheck.by));

type Row = ReturnType<ReturnType<typeof rows>['all']>[number];

const asCheck = ({ check, byName }: Row): GaugeCheck => ({
  on: check.on,
  good: check.good,
  certificate: check.certificate,
  dueOn: check.dueOn,
  note: check.note,
  by: byName,
  at: check.at,
});

const rowsOfGauge = prepared((store) =>
  rows(store)
    .where(eq(gaugeCheck.gaugeId, sql.placeholder('gaugeId')))
    .orderBy(asc(gaugeCheck.on), asc(gaugeCheck.at), asc(gaugeCheck.id))
    .prepare(),
);

/** The checks of a gauge in the order of their days; of one day in the order in which they were entered. */
export const checksOf = (store: ReadStore, gaugeId: string): GaugeCheck[] =>
  rowsOfGauge(store).all({ gaugeId }).map(asCheck);

/** Every check there is, by gauge, for whoever wants the whole register at once. */
export const checksByGauge = (store: ReadStore): Map<string, GaugeCheck[]> =>
  new Map(
    [
      ...Map.groupBy(
        rows(store).orderBy(asc(gaugeCheck.on), asc(gaugeCheck.at), asc(gaugeCheck.id)).all(),
        ({ check }) => check.gaugeId,
      ),
    ].map(([id, own]) => [id, own.map(asCheck)]),
  );

const checkedAmong = prepared((store) =>
  store
    .selectDistinct({ id: gauge.id, calibratedOn: gauge.calibratedOn })
    .from(gauge)
    .innerJoin(gaugeCheck, eq(gaugeCheck.gaugeId, gauge.id))
    .where(sql`${gauge.id} in (select value from json_each(${sql.placeholder('ids')}))`)
    .prepare(),
);

/** When each of these gauges could not be trusted; only gauges that were ever found bad are in it. */
function spansOf(store: ReadStore, gaugeIds: string[]): Map<string, DoubtfulSpan[]> {
  const bad = checkedAmong(store).all({ ids: JSON.stringify(gaugeIds) });
  return new Map(bad.map((own) => [own.id, doubtfulSpans(own, checksOf(store, own.id))]));
}

interface TakenReading {
  gaugeId: string | null;
  gaugeRemark: string;
  at: string;
}

/**
 * The remark on a reading's gauge: what was said when it was taken, and what became known afterwards.
 * The reading itself stays as it was written.
 */
export function gaugeRemarks(
  store: ReadStore,
  readings: readonly TakenReading[],
): (reading: TakenReading) => string {
  const spans = spansOf(store, [...new Set(readings.flatMap(({ gaugeId }) => gaugeId ?? []))]);
  if (spans.size === 0) return ({ gaugeRemark }) => gaugeRemark;
  const { timeZone } = shopOf(store);
  return ({ gaugeId, gaugeRemark, at }) => {
    const day = dateIn(timeZone, at);
    const doubtful = spans.get(gaugeId ?? '')?.find((span) => inDoubt(day, span));
    if (doubtful === undefined || gaugeRemark.includes('found bad')) return gaugeRemark;
    return [gaugeRemark, `gauge found bad on ${doubtful.badOn}: in doubt`]
      .filter(Boolean)
      .join('; ');
  };
}
