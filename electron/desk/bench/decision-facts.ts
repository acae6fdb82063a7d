import { decisionsOf, standingDecisions } from '../../../db/queries/decisions.ts';
import { fitsOnModels } from '../../../db/queries/parts/fits.ts';
import { findParts, partById } from '../../../db/queries/parts/part.ts';
import type { ReadStore } from '../../../db/store.ts';
import type {
  BenchSheet,
  Decision,
  FeatureOnSheet,
  Reading,
} from '../../../shared/contract/bench/index.ts';
import type { Part } from '../../../shared/contract/parts/index.ts';
import type { PartFigure } from '../../../shared/work/bench/deciding/decision-figures.ts';
import type { EngineFacts } from '../../../shared/work/bench/deciding/decision-grounds.ts';
import {
  oversizesKept,
  type ShelfPart,
} from '../../../shared/work/bench/deciding/decision-parts.ts';
import { decisionPartsOf } from '../../../shared/work/bench/deciding/decision-rules.ts';
import {
  COMMON_OVERSIZES,
  COMMON_UNDERSIZES,
} from '../../../shared/work/bench/deciding/decision-sizes.ts';
import { tellingEnd } from '../../../shared/work/bench/derived-verdict.ts';
import { acceptedBand, limitsAt } from '../../../shared/work/bench/reading-verdict.ts';
import { FEATURE_UNITS } from '../../../shared/work/features.ts';
import { sheetOf } from './sheet.ts';

/** What advice is taken from: the sheet's figures as received, the shelf, and what was decided. */

const AS_RECEIVED = 'as-received';
/** More parts than any shop keeps for one engine model. */
const ALL_OF_A_MODEL = 1000;

const latest = (readings: readonly Reading[]): Reading | undefined =>
  readings.filter(({ phase, superseded }) => phase === AS_RECEIVED && !superseded).at(-1);

const measured = ({ feature, places, unit }: FeatureOnSheet): PartFigure[] =>
  places.flatMap(({ key, label, cylinder, readings }) => {
    const reading = latest(readings);
    if (reading === undefined) return [];
    return {
      feature,
      cylinder,
      place: key,
      placeLabel: label,
      value: reading.valueBase,
      uncertainty: reading.uncertaintyBase,
      verdict: reading.verdict,
      low: reading.low,
      high: reading.high,
      unit,
    };
  });

const derived = ({ derived: figures, cylinders }: BenchSheet): PartFigure[] =>
  figures
    .filter(({ phase }) => phase === AS_RECEIVED)
    .map((figure) => {
      const { feature, cylinder, verdict, specification } = figure;
      const band = acceptedBand(feature, limitsAt(specification, 1), AS_RECEIVED);
      return {
        feature,
        cylinder,
        place: '',
        placeLabel: cylinder > 0 && cylinders > 1 ? `cylinder ${cylinder}` : '',
        ...tellingEnd(figure, band),
        verdict,
        ...band,
        unit: specification?.unit ?? FEATURE_UNITS[feature],
      };
    });

type FittingPart = Part & Pick<ShelfPart, 'fits'>;

export interface JobFacts extends EngineFacts {
  sheet: BenchSheet;
  /** Limits of a new part, mm. */
  newBore: { low: number | null; high: number | null };
  newPin: { low: number | null; high: number | null };
  /** The engine's own and then its family's; none when none is chosen. */
  models: string[];
  /** Parts that may fit one of the models. */
  shelf: FittingPart[];
  all: Decision[];
  standing: Decision[];
}

type KnownModel = Pick<NonNullable<BenchSheet['engineModel']>, 'id' | 'model'>;

/** Parts that somebody said fit one of the models, and those whose words may name one; each once. */
function shelfFor(store: ReadStore, models: readonly KnownModel[]): FittingPart[] {
  const said = Map.groupBy(
    fitsOnModels(
      store,
      models.map(({ id }) => id),
    ),
    ({ partId }) => partId,
  );
  const named = models.flatMap(({ model }) => findParts(store, model, ALL_OF_A_MODEL));
  const others = [...said.keys()].flatMap((partId) => partById(store, partId) ?? []);
  return [
    ...new Map(
      [...named, ...others].map((part) => [part.id, { ...part, fits: said.get(part.id) ?? [] }]),
    ).values(),
  ];
}

/** @param allowance stock on the diameter for cleaning up, mm */
export function factsOf(store: ReadStore, jobId: string, allowance: number): JobFacts {
  const sheet = sheetOf(store, jobId);
  const known = [sheet.engineModel ?? [], sheet.engineModel?.variantOf ?? []].flat();
  const models = known.map(({ model }) => model);
  const shelf = shelfFor(store, known);
  const limitsOf = (feature: FeatureOnSheet['feature']) => {
    const onSheet = sheet.features.find((each) => each.feature === feature);
    const { low, high } = limitsAt(onSheet?.specification ?? null, 1);
    return { low, high };
  };
  const newBore = limitsOf('bore');
  const newPin = limitsOf('crankpin');
  const bore = sheet.features.find(({ feature }) => feature === 'bore');
  const all = decisionsOf(store, jobId);
  return {
    sheet,
    models,
    shelf,
    newBore,
    newPin,
    all,
    standing: standingDecisions(store, jobId),
    figures: [...sheet.features.flatMap(measured), ...derived(sheet)],
    nominalBore: sheet.engineModel?.bore ?? newBore.low,
    borePlaces: bore?.places.filter(({ cylinder }) => cylinder === 1).length ?? 0,
    newCrankpin: newPin.high,
    oversizes: [...new Set([...COMMON_OVERSIZES, ...oversizesKept(shelf, models)])].toSorted(
      (a, b) => a - b,
    ),
    undersizes: COMMON_UNDERSIZES,
    allowance,
    parts: decisionPartsOf(sheet),
  };
}
