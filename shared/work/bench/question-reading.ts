import {
  BASE_UNIT_OF,
  convert,
  dimensionOf,
  parseReading,
  plainCharacters,
  type Reading,
  type Unit,
} from '../../trade/index.ts';
import { FEATURE_UNITS, type Feature } from '../features.ts';
import { type Candidate, candidatesFor, type ReadingSlipKind } from './slips/candidates.ts';
import { HABITS } from './slips/feature-habits.ts';
import { SLIP_FREQUENCIES } from './slips/frequencies.ts';
import { foreignStepChance, type GaugeStep, stepChance, usualStep } from './slips/gauge-steps.ts';
import { type TrueValues, trueValuesOf } from './slips/true-values.ts';

export type { ReadingSlipKind } from './slips/candidates.ts';

export interface ReadingToQuestion {
  /** As typed, with or without a unit. */
  readonly text: string;
  /** What the number is in when no unit is typed. */
  readonly unit: Unit;
  readonly feature: Feature;
  /** Limits of the place, base unit of the feature; null where there is none. */
  readonly low: number | null;
  readonly high: number | null;
  readonly wearLimit: number | null;
  /** Readings beside it (other places of the same bore, pin or coil), base unit. */
  readonly others: readonly number[];
  /** Smallest step that the gauge shows, in `unit`; null when no gauge is known. */
  readonly resolution: number | null;
}

export interface ReadingQuestion {
  readonly kind: ReadingSlipKind;
  /** What was likely meant, in `unit`; null where the reading can't be and nothing explains it. */
  readonly likely: number | null;
  /** That of the likely reading, which may be another than the one typed: 12 mm was 12 thou. */
  readonly unit: Unit;
  /** How many times likelier a slip is than that the reading is what the gauge showed. */
  readonly odds: number;
}

/**
 * From which odds a reading is asked about. A question costs a glance and a key; a slip that goes by costs a
 * part, or somebody's trust in the paper. Common practice, no source.
 */
export const ODDS_TO_ASK = 0.5;

/**
 * Whether a reading is likelier a slip than what the gauge showed (Bayes' rule). How likely a true value is
 * comes from what such a feature reads new, worn and failed, from its limits, and from the readings beside
 * it; how likely a slip, from how often its kind is made. Null when it need not be asked about. Nothing is
 * ever changed by this: it makes an offer.
 *
 * @throws {RangeError} with a sentence for the person who typed, when the text is not a reading in the
 * feature's dimension, or a limit or a resolution isn't finite
 */
export function questionReading(asked: ReadingToQuestion): ReadingQuestion | null {
  demandFiniteFigures(asked);
  const base = FEATURE_UNITS[asked.feature];
  const reading = parseReading(asked.text, asked.unit);
  if (dimensionOf(reading.unit) !== dimensionOf(base))
    throw new RangeError(
      `'${asked.text}' is in ${reading.unit}, which measures ${dimensionOf(reading.unit)}; here ${dimensionOf(base)} is wanted.`,
    );
  // The gauge's step says something only of what was typed in the gauge's own unit.
  const resolution = reading.unit === asked.unit ? asked.resolution : null;
  const step =
    resolution === null
      ? HABITS[asked.feature].resolution
      : convert(resolution, reading.unit, baseOf(reading.unit));
  const values = trueValuesOf(asked, step);
  const at = {
    values,
    gauge: gaugeStep(reading.unit, resolution, asked),
    step,
    typedIn: reading.unit,
  };
  const candidates = candidatesFor(
    { reading, unitTyped: parsedOtherwise(asked), resolution },
    values,
  );
  return decide(reading, {
    honest: chanceOf(reading, at),
    weighed: candidates.map((candidate) => ({
      candidate,
      weight: candidate.frequency * chanceOf({ ...candidate, value: candidate.likely }, at),
    })),
    unexplained: (SLIP_FREQUENCIES.unexplained * step) / anyFigure(reading, step),
  });
}

/** A slip that has a name is offered although something unnamed is somewhat likelier. */
const NAMED_BEFORE_UNEXPLAINED = 20;

interface Weighed {
  readonly candidate: Candidate;
  readonly weight: number;
}

function decide(
  reading: Reading,
  chances: { honest: number; weighed: readonly Weighed[]; unexplained: number },
): ReadingQuestion | null {
  const { honest, weighed, unexplained } = chances;
  const slips = weighed.reduce((sum, { weight }) => sum + weight, unexplained);
  const odds = honest > 0 ? slips / honest : Number.MAX_VALUE;
  if (odds < ODDS_TO_ASK) return null;
  const best = weighed.toSorted((a, b) => b.weight - a.weight)[0];
  return best === undefined || best.weight * NAMED_BEFORE_UNEXPLAINED < unexplained
    ? { kind: 'unexplained', likely: null, unit: reading.unit, odds }
    : {
        kind: best.candidate.kind,
        likely: best.candidate.likely,
        unit: best.candidate.unit,
        odds,
      };
}

/** The chance that a true value is read as this very figure. */
function chanceOf(
  { value, unit }: { value: number; unit: Unit },
  {
    values,
    gauge,
    step,
    typedIn,
  }: { values: TrueValues; gauge: GaugeStep | null; step: number; typedIn: Unit },
): number {
  const density = values.density(convert(value, unit, baseOf(unit)));
  if (unit !== typedIn) return density * foreignStepChance(value, unit, step);
  // Near zero a step of the gauge is wider than what lies there.
  const width = Math.min(step, Math.abs(convert(value, unit, baseOf(unit))) || step);
  return density * width * (gauge === null ? 1 : stepChance(value, gauge));
}

function gaugeStep(
  unit: Unit,
  resolution: number | null,
  { feature }: ReadingToQuestion,
): GaugeStep | null {
  if (resolution !== null) return { size: resolution, known: true };
  const size = usualStep(unit, FEATURE_UNITS[feature], HABITS[feature].resolution);
  return size === null ? null : { size, known: false };
}

/** Seven powers of ten, each as likely: what a figure is that has nothing to do with the feature. */
const ANY_FIGURE = Math.log(1e7);

const anyFigure = ({ value, unit }: Reading, step: number): number =>
  Math.max(Math.abs(convert(value, unit, baseOf(unit))), step) * ANY_FIGURE;

/** Whether the number came with a unit of its own: without one it follows the field's. */
function parsedOtherwise({ text, unit }: ReadingToQuestion): boolean {
  return /[^\d\s.,+\-/]/.test(plainCharacters(text)) || parseReading(text, unit).unit !== unit;
}

const baseOf = (unit: Unit) => BASE_UNIT_OF[dimensionOf(unit)];

function demandFiniteFigures({
  low,
  high,
  wearLimit,
  others,
  resolution,
}: ReadingToQuestion): void {
  for (const figure of [low, high, wearLimit, resolution, ...others])
    if (figure !== null && !Number.isFinite(figure))
      throw new RangeError('Limits, readings beside it and the step of a gauge are numbers.');
  if (resolution !== null && resolution <= 0)
    throw new RangeError('The step of a gauge is more than zero.');
}
