import type { FeatureOnSheet, Reading, Verdict } from '../../shared/contract/bench/index.ts';
import { aim } from '../../shared/trade/index.ts';
import { limitsInPhase } from '../../shared/work/bench/deciding/decided-limits.ts';
import { acceptedBand } from '../../shared/work/bench/reading-verdict.ts';
import type { MeasuredFeature } from '../../shared/work/features.ts';
import type { Phase } from '../../shared/work/vocabulary.ts';

/** Reading the sheet: which reading stands, which place is wanted next, how a feature fares. */

export type PlaceOnSheet = FeatureOnSheet['places'][number];

/** The reading that stands at a place in a phase: the newest that was not corrected. */
export const standingReading = (place: PlaceOnSheet, phase: Phase): Reading | undefined =>
  place.readings
    .filter((reading) => reading.phase === phase && !reading.superseded)
    .toSorted((a, b) => a.at.localeCompare(b.at))
    .at(-1);

/**
 * The place wanted next: the first after `after` that has no standing reading in the phase, going round
 * once; null when every place has one.
 */
export function nextPlace(
  places: readonly PlaceOnSheet[],
  phase: Phase,
  after: string | null = null,
): PlaceOnSheet | null {
  const start = places.findIndex(({ key }) => key === after) + 1;
  const round = [...places.slice(start), ...places.slice(0, start)];
  return (
    round.find((place) => place.key !== after && standingReading(place, phase) === undefined) ??
    null
  );
}

/** What a place is set to, base unit: the source's aim, else the middle of a band with two limits. */
export const targetOf = ({ low, high, aim: stated }: PlaceOnSheet): number | null =>
  stated ?? (low === null || high === null ? null : aim({ low, high }));

/** A place as a reading of this phase is held against it: to the wear limit where a used part may go. */
export const heldInPhase = (
  feature: MeasuredFeature,
  place: PlaceOnSheet,
  phase: Phase,
): PlaceOnSheet => ({
  ...place,
  ...limitsInPhase(place, phase),
  aim: targetOf({ ...place, ...limitsInPhase(place, phase) }),
  ...acceptedBand(feature, limitsInPhase(place, phase), phase),
});

export interface FeatureSummary {
  readonly measured: number;
  readonly places: number;
  /** The verdict that asks for most attention; null when nothing is measured. */
  readonly worst: Verdict | null;
  readonly words: string;
}

const ATTENTION: readonly Verdict[] = ['outside', 'too-close', 'no-band', 'within'];

const WORDS: Record<Verdict, (count: number, measured: number) => string> = {
  outside: (count) => `${count} outside`,
  'too-close': (count) => `${count} too close to call`,
  'no-band': () => 'no band to judge by',
  within: (count, measured) => (count === measured && count > 1 ? 'all within' : 'within'),
};

/** How a feature fares in a phase, for the list of features. */
export function summarise(feature: FeatureOnSheet, phase: Phase): FeatureSummary {
  const verdicts = feature.places.flatMap((place) => {
    const reading = standingReading(place, phase);
    return reading === undefined ? [] : [reading.verdict];
  });
  const worst = ATTENTION.find((verdict) => verdicts.includes(verdict)) ?? null;
  const count = verdicts.filter((verdict) => verdict === worst).length;
  return {
    measured: verdicts.length,
    places: feature.places.length,
    worst,
    words: worst === null ? 'not measured' : WORDS[worst](count, verdicts.length),
  };
}
