import type { Size } from './decision-sizes.ts';
import type { DecisionChoice, DecisionSubject } from './decisions.ts';
import type { MeasuredFeature } from './features.ts';
import type { PlaceLimits } from './reading-verdict.ts';
import type { Phase } from './vocabulary.ts';

/**
 * What a part has to measure once it was decided to go over or under nominal: a bore that is machined to the
 * next oversize is held against the limits of a new one, moved by the step, and so is what goes into it.
 */

export interface SizeDecision {
  subject: DecisionSubject;
  /** From 1; 0 for what an engine has once. */
  cylinder: number;
  choice: DecisionChoice;
  /** mm over or under nominal. */
  step: number | null;
  /** mm; null where nothing is machined or the book has no band. */
  machineTo: Size | null;
}

/** Limits of a place that a decision moved, mm, and by how much; under nominal is negative. */
export interface DecidedLimits extends PlaceLimits {
  step: number;
}

/** Which decision moves a feature, and to which side. An undersize rod closes on a smaller pin. */
const MOVED_BY: Partial<
  Record<MeasuredFeature, { subject: DecisionSubject; choice: DecisionChoice; sign: 1 | -1 }>
> = {
  bore: { subject: 'cylinder', choice: 'next-oversize', sign: 1 },
  'piston-skirt': { subject: 'piston', choice: 'next-oversize', sign: 1 },
  crankpin: { subject: 'crankshaft', choice: 'undersize', sign: -1 },
  'rod-big-end': { subject: 'connecting-rod', choice: 'undersize', sign: -1 },
};

// Steps and limits are decimals that people typed; their sum is one too.
const decimal = (value: number): number => Number(value.toFixed(6));

/** How far over (under: negative) nominal a feature of a cylinder is to be, mm; 0 when nothing moves it. */
export function decidedStep(
  feature: MeasuredFeature,
  cylinder: number,
  standing: readonly SizeDecision[],
): number {
  const found = decisionOn(feature, cylinder, standing);
  return found === undefined ? 0 : found.sign * (found.decision.step ?? 0);
}

function decisionOn(feature: MeasuredFeature, cylinder: number, standing: readonly SizeDecision[]) {
  const moved = MOVED_BY[feature];
  if (moved === undefined) return undefined;
  const decision = standing.find(
    ({ subject, choice, cylinder: of }) =>
      subject === moved.subject && choice === moved.choice && (of === cylinder || of === 0),
  );
  return decision === undefined ? undefined : { decision, sign: moved.sign };
}

/**
 * The limits of a place after what was decided; null when no decision moves them. Where the machine shop was
 * given another size than the book's, that size holds; the limit of wear moves with the step.
 * @param limits of a new part, mm
 */
export function decidedLimits(
  feature: MeasuredFeature,
  cylinder: number,
  limits: PlaceLimits,
  standing: readonly SizeDecision[],
): DecidedLimits | null {
  const found = decisionOn(feature, cylinder, standing);
  const step = decidedStep(feature, cylinder, standing);
  if (found === undefined || step === 0) return null;
  const moved = (limit: number | null) => (limit === null ? null : decimal(limit + step));
  const book = { low: moved(limits.low), high: moved(limits.high) };
  const { low, high } = found.decision.machineTo ?? book;
  const same = low === book.low && high === book.high;
  return {
    low,
    high,
    // The source's aim is one of its own band.
    aim: same ? moved(limits.aim) : null,
    wearLimit: moved(limits.wearLimit),
    step,
  };
}

/** What a reading of a phase is held to: as it came in, a part is what the book says of it. */
export const limitsInPhase = <Limits extends PlaceLimits>(
  place: Limits & { decided: DecidedLimits | null },
  phase: Phase,
): PlaceLimits => (phase === 'as-received' || place.decided === null ? place : place.decided);
