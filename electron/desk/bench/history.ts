import { jobsOfEngine, machineOfEngine } from '../../../db/queries/engine-life.ts';
import { shopOf } from '../../../db/queries/office.ts';
import { engineModelById } from '../../../db/queries/specbook.ts';
import type { ReadStore } from '../../../db/store.ts';
import type {
  BenchSheet,
  DerivedOnSheet,
  EngineHistory,
  FeatureHistory,
  HistoryPoint,
  JobOfEngine,
  PlaceHistory,
} from '../../../shared/contract/bench/index.ts';
import { limitsAt } from '../../../shared/work/bench/reading-verdict.ts';
import { dateIn } from '../../../shared/work/calendar.ts';
import { FEATURE_UNITS, FEATURES } from '../../../shared/work/features.ts';
import { PHASES, type Phase } from '../../../shared/work/vocabulary.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { sheetOf } from './sheet.ts';

/** A job with its sheet and the day on which an instant fell there. */
interface SheetOfJob {
  job: JobOfEngine;
  sheet: BenchSheet;
  dayOf: (at: string) => string;
}

/** A place with what one job adds to it. */
interface Entry {
  feature: FeatureHistory['feature'];
  label: string;
  unit: FeatureHistory['unit'];
  place: Omit<PlaceHistory, 'points'>;
  points: HistoryPoint[];
}

const entryOfJob = ({ job }: SheetOfJob) => ({
  jobId: job.id,
  code: job.code,
  hours: job.engineHours,
});

/** What the place is held to from now on. */
const limitsNow = ({ low, high, wearLimit }: Pick<PlaceHistory, 'low' | 'high' | 'wearLimit'>) => ({
  low,
  high,
  wearLimit,
});

/** What was measured on a job: the latest reading that stands of each place and phase. */
const measured = (from: SheetOfJob): Entry[] =>
  from.sheet.features.flatMap(({ feature, label, unit, places }) =>
    places.map(({ key, label: placeLabel, decided, readings, ...asItCame }) => ({
      feature,
      label,
      unit,
      place: { key, label: placeLabel, ...limitsNow(decided ?? asItCame) },
      points: PHASES.flatMap((phase): HistoryPoint[] => {
        const reading = readings.findLast((each) => each.phase === phase && !each.superseded);
        if (reading === undefined) return [];
        return [
          {
            ...entryOfJob(from),
            phase,
            on: from.dayOf(reading.at),
            text: reading.text,
            unit: reading.unit,
            value: reading.valueBase,
            uncertainty: reading.uncertaintyBase,
            verdict: reading.verdict,
          },
        ];
      }),
    })),
  );

/** The instant of the last reading of a phase: when what follows from it was known. */
const lastReadingAt = ({ features }: BenchSheet, phase: Phase): string | undefined =>
  features
    .flatMap(({ places }) => places.flatMap(({ readings }) => readings))
    .filter((reading) => reading.phase === phase)
    .map(({ at }) => at)
    .sort()
    .at(-1);

function followed(from: SheetOfJob, value: DerivedOnSheet): Entry {
  const at = lastReadingAt(from.sheet, value.phase);
  const limits = limitsAt(value.specification, 1);
  // Wear opens a clearance: how far it has come shows at its loosest spot.
  const end = value.largest ?? value;
  return {
    feature: value.feature,
    label: value.label,
    unit: value.specification?.unit ?? FEATURE_UNITS[value.feature],
    place: {
      key: `c${value.cylinder}`,
      label: from.sheet.cylinders > 1 ? `cylinder ${value.cylinder}` : '',
      low: limits.low,
      high: limits.high,
      wearLimit: limits.wearLimit,
    },
    points: [
      {
        ...entryOfJob(from),
        phase: value.phase,
        on: at === undefined ? from.job.takenInOn : from.dayOf(at),
        text: '',
        unit: FEATURE_UNITS[value.feature],
        value: end.value,
        uncertainty: end.uncertainty,
        verdict: value.verdict,
      },
    ],
  };
}

/** Entries of all jobs, oldest job first, put together by feature and place. */
function byFeature(entries: readonly Entry[]): FeatureHistory[] {
  const features = Map.groupBy(
    entries.filter(({ points }) => points.length > 0),
    ({ feature }) => feature,
  );
  return FEATURES.flatMap((feature): FeatureHistory[] => {
    const own = features.get(feature);
    const last = own?.at(-1);
    if (own === undefined || last === undefined) return [];
    const places = Map.groupBy(own, ({ place }) => place.key);
    return [
      {
        feature,
        label: last.label,
        unit: last.unit,
        places: [...places.values()].flatMap((each): PlaceHistory[] => {
          const latest = each.at(-1);
          return latest === undefined
            ? []
            : [{ ...latest.place, points: each.flatMap(({ points }) => points) }];
        }),
      },
    ];
  });
}

/** An engine's life: what was done on each job, and every reading that stands. */
function historyOf(store: ReadStore, engineId: string): EngineHistory {
  const machine = found(machineOfEngine(store, engineId), 'engine');
  const { engineModelId } = machine.engine;
  const { timeZone } = shopOf(store);
  const jobs = jobsOfEngine(store, engineId);
  const sheets = jobs.toReversed().map(
    (job): SheetOfJob => ({
      job,
      sheet: sheetOf(store, job.id),
      dayOf: (at) => dateIn(timeZone, new Date(at)),
    }),
  );
  return {
    machine,
    engineModel:
      engineModelId === null ? null : found(engineModelById(store, engineModelId), 'engine model'),
    jobs,
    features: byFeature(
      sheets.flatMap((from) => [
        ...measured(from),
        ...from.sheet.derived
          .toSorted((a, b) => PHASES.indexOf(a.phase) - PHASES.indexOf(b.phase))
          .map((value) => followed(from, value)),
      ]),
    ),
  };
}

export const engineHistory = os.bench.engineHistory.handler(({ input, context }) =>
  historyOf(context.store.read, input.engineId),
);
