import type { MeasuredFeature } from '../../features.ts';
import type { Phase } from '../../vocabulary.ts';
import type { PlaceLimits } from '../reading-verdict.ts';
import type { Size } from './decision-sizes.ts';
import type { DecisionChoice, DecisionSubject } from './decisions.ts';
import { isRenewed, withoutWear } from './renewed-parts.ts';

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

/** Decisions after which a part has another size than before; all others leave it as it was. */
const SIZING: readonly DecisionChoice[] = ['next-oversize', 'undersize', 'replace'];

/**
 * The sizes that an engine came with from its earlier jobs: what was last decided of each part, unless that
 * was to replace it, which brings the book's size back.
 * @param earlier decisions that stand, of jobs that were built, oldest first
 */
export const sizesItCameWith = (earlier: readonly SizeDecision[]): SizeDecision[] =>
  [
    ...Map.groupBy(
      earlier.filter(({ choice }) => SIZING.includes(choice)),
      ({ subject, cylinder }) => `${subject} ${cylinder}`,
    ).values(),
  ]
    .flatMap((same) => same.at(-1) ?? [])
    .filter(({ choice }) => choice !== 'replace');

/** The decisions that bear on a job's sizes. */
export interface JobSizes {
  /** As {@link sizesItCameWith} gives them. */
  readonly cameWith: readonly SizeDecision[];
  /** What stands of this job's own. */
  readonly standing: readonly SizeDecision[];
}

/** What a place is held to, as it came and after what was decided on this job. */
export interface LimitsOfPlace extends PlaceLimits {
  /** Where an earlier job gave it another size: that size, which is what low, high, aim and wear limit say. */
  came: DecidedLimits | null;
  decided: DecidedLimits | null;
  /** Whether this job has it machined or replaced: from then on the limits of a new part hold. */
  renewed: boolean;
}

/**
 * The limits of a place: the book's, or of the size that it came with; and what this job decided instead.
 * @param book limits of a new part of the book's size, mm
 */
export function limitsOfPlace(
  feature: MeasuredFeature,
  cylinder: number,
  book: PlaceLimits,
  { cameWith, standing }: JobSizes,
): LimitsOfPlace {
  const came = decidedLimits(feature, cylinder, book, cameWith);
  const back = came !== null && isReplaced(feature, cylinder, standing);
  const decided = decidedLimits(feature, cylinder, book, standing);
  const { low, high, aim, wearLimit } = came ?? book;
  return {
    low,
    high,
    aim,
    wearLimit,
    came,
    decided: decided ?? (back ? { ...book, step: 0 } : null),
    renewed: isRenewed(feature, cylinder, standing),
  };
}

/** How far over (under: negative) nominal a feature is in a phase, mm. */
export function stepInPhase(
  feature: MeasuredFeature,
  cylinder: number,
  phase: Phase,
  { cameWith, standing }: JobSizes,
): number {
  const came = decidedStep(feature, cylinder, cameWith);
  if (phase === 'as-received') return came;
  if (isReplaced(feature, cylinder, standing)) return 0;
  return decidedStep(feature, cylinder, standing) || came;
}

function isReplaced(
  feature: MeasuredFeature,
  cylinder: number,
  standing: readonly SizeDecision[],
): boolean {
  const subject = MOVED_BY[feature]?.subject;
  return standing.some(
    (decision) =>
      decision.subject === subject &&
      decision.choice === 'replace' &&
      (decision.cylinder === cylinder || decision.cylinder === 0),
  );
}

/**
 * What a reading of a phase is held to: what was decided holds once the part was machined, and what is new
 * by then has no wear limit.
 */
export const limitsInPhase = <Limits extends PlaceLimits>(
  place: Limits & { decided: DecidedLimits | null; renewed: boolean },
  phase: Phase,
): PlaceLimits =>
  withoutWear(
    phase === 'as-received' || place.decided === null ? place : place.decided,
    place.renewed,
    phase,
  );
