import { type EngineShape, FEATURE_LABELS, type MeasuredFeature, placesOf } from '../features.ts';

/** A step of the build that nobody may walk past: it is ticked by a person, or overridden in writing. */
export interface HoldPoint {
  key: string;
  label: string;
  /** What can hurt, or what goes wrong when it is skipped. Empty when nothing does. */
  caution: string;
  /** Features that must have a reading before the point can be ticked. */
  needs: readonly MeasuredFeature[];
}

export interface HoldPointEvent {
  key: string;
  outcome: 'passed' | 'overridden' | 'reopened';
}

export type HoldPointState = 'open' | 'passed' | 'overridden';

/** Where a hold point stands after its events, oldest first: the last one decides. */
export function holdPointState(key: string, events: readonly HoldPointEvent[]): HoldPointState {
  const last = events.findLast((event) => event.key === key);
  return last === undefined || last.outcome === 'reopened' ? 'open' : last.outcome;
}

/** What keeps a point from being ticked: a feature, and the places of it that have no final reading. */
export interface MissingReading {
  feature: MeasuredFeature;
  /** What people read; empty when every place of it lacks one. */
  places: string[];
}

/** `Coil air gap`, or `Coil air gap: leg 2` when the other leg is there. */
export const missingWords = ({ feature, places }: MissingReading): string =>
  [FEATURE_LABELS[feature], places.join('; ')].filter(Boolean).join(': ');

/**
 * The features that still lack a reading before the point can be ticked: at every place, since one leg of
 * a coil or one cylinder's lash says nothing of the other. Of a tightening the final torque counts, not
 * the stages on the way to it.
 */
export const missingReadings = (
  point: Pick<HoldPoint, 'needs'>,
  shape: EngineShape,
  measured: readonly { feature: MeasuredFeature; place: string }[],
): MissingReading[] =>
  point.needs.flatMap((feature) => {
    const wanted = placesOf(feature, shape).filter(({ share }) => share === 1);
    const without = wanted.filter(
      ({ key }) => !measured.some((each) => each.feature === feature && each.place === key),
    );
    if (without.length === 0) return [];
    const some = without.length < wanted.length;
    return [{ feature, places: some ? without.map(({ label }) => label) : [] }];
  });

/**
 * The steps before this one that were still open when it was done; empty when it is open itself or was
 * done in its turn. Events are oldest first.
 */
export function doneBefore<Step extends { key: string }>(
  steps: readonly Step[],
  key: string,
  events: readonly HoldPointEvent[],
): Step[] {
  if (holdPointState(key, events) === 'open') return [];
  const until = events.slice(
    0,
    events.findLastIndex((event) => event.key === key),
  );
  return steps
    .slice(
      0,
      steps.findIndex((step) => step.key === key),
    )
    .filter((step) => holdPointState(step.key, until) === 'open');
}
