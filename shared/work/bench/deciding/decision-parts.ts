import { fold } from '../../fold.ts';

/**
 * Parts of the shelf that fit a decision. First those of which somebody said what they are on the engine
 * model; then those known by the words on them alone: the number and description have to name the engine
 * model, what it is, and its oversize. Nothing is taken for granted by it; the line that comes of it says
 * which part was meant.
 */

export const FITTED_PARTS = [
  'cylinder',
  'piston',
  'rings',
  'connecting-rod',
  'crankshaft',
  'intake-valve',
  'exhaust-valve',
  'valve-spring',
  'valve-guide',
  'valve-seat',
  'head',
  'coil',
  'gasket-set',
  'head-gasket',
  'engine',
] as const;
export type FittedPart = (typeof FITTED_PARTS)[number];

export const FITTED_PART_LABELS: Record<FittedPart, string> = {
  cylinder: 'Cylinder',
  piston: 'Piston',
  rings: 'Ring set',
  'connecting-rod': 'Connecting rod',
  crankshaft: 'Crankshaft',
  'intake-valve': 'Intake valve',
  'exhaust-valve': 'Exhaust valve',
  'valve-spring': 'Valve spring',
  'valve-guide': 'Valve guide',
  'valve-seat': 'Valve seat',
  head: 'Cylinder head',
  coil: 'Ignition coil',
  'gasket-set': 'Gasket set',
  'head-gasket': 'Head gasket',
  engine: 'Exchange engine',
};

export interface ShelfPart {
  number: string;
  description: string;
  /** Thousandths. */
  onHand: number;
  /** What somebody said that it is on the models in question, and in which oversize, mm; none where nobody did. */
  fits?: readonly { readonly fitted: FittedPart | 'other'; readonly step: number }[];
}

// The first that fits tells what a part is: a piston ring is no piston, a head gasket no head.
const NAMES: readonly (readonly [FittedPart | 'other', RegExp])[] = [
  ['head-gasket', /\bhead gasket\b/],
  ['gasket-set', /\bgasket (?:set|kit)\b/],
  ['valve-spring', /\bvalve springs?\b(?! (?:seat|retainer|cap|keeper))/],
  ['valve-guide', /\bvalve guides?\b(?! seal)/],
  ['valve-seat', /\bvalve seats?\b/],
  ['other', /\b(?:gaskets?|seals?|bolts?|studs?|keys?|guides?|springs?|pins?)\b(?<!\bwith pins?)/],
  ['rings', /\bring set\b|\bpiston[- ]rings?\b|^rings?\b/],
  ['piston', /\bpistons?\b/],
  ['connecting-rod', /\b(?:connecting|con)[- ]?rod\b/],
  ['crankshaft', /\bcrankshaft\b/],
  ['intake-valve', /\b(?:intake|inlet) valve\b/],
  ['exhaust-valve', /\bexhaust valve\b/],
  ['head', /\bcylinder head\b|^head\b/],
  ['coil', /\bignition coil\b/],
  ['cylinder', /\bcylinder\b/],
  ['engine', /\b(?:exchange|short|complete) engine\b/],
];

const nameOf = (description: string) =>
  NAMES.find(([, words]) => words.test(description))?.[0] ?? 'other';

const SIZE = String.raw`(\d*[.,]\d+)\s*(mm|in\b|")?`;
const STEPS: readonly (readonly [sign: 1 | -1, RegExp])[] = [
  [1, new RegExp(String.raw`\+\s*${SIZE}`)],
  [1, new RegExp(String.raw`${SIZE}\s*(?:over(?:size)?\b|o/s\b)`)],
  [-1, new RegExp(String.raw`${SIZE}\s*(?:under(?:size)?\b|u/s\b)`)],
];
/** Without a unit: millimetre steps begin at 0.1, inch steps (.010, .020, .030, .040) end below it. */
const INCHES_BELOW = 0.1;

/** mm over (or, negative, under) the nominal size that a description names; 0 when it names none. */
export function stepIn(description: string): number {
  const words = fold(description);
  for (const [sign, pattern] of STEPS) {
    const [, digits, unit] = pattern.exec(words) ?? [];
    if (digits === undefined) continue;
    const size = Number(digits.replace(',', '.'));
    const inches = unit === undefined ? size < INCHES_BELOW : unit !== 'mm';
    return sign * Number((inches ? size * 25.4 : size).toFixed(4));
  }
  return 0;
}

/** Whether the text names the model as a word of its own, however it is spaced: `D-680`, `D 680`, `D680`. */
function names(text: string, model: string): boolean {
  const pieces = fold(model).match(/\p{L}+|\p{N}+/gu);
  if (pieces === null) return false;
  const spaced = pieces.join(String.raw`[\s\-._/]*`);
  return new RegExp(String.raw`(?<![\p{L}\p{N}])${spaced}(?![\p{L}\p{N}])`, 'u').test(fold(text));
}

interface WantedPart {
  part: FittedPart;
  step: number;
  models: readonly string[];
}

const isStep = (a: number, b: number): boolean => Math.abs(a - b) < 0.001;

/** Where somebody said what a part is, its words are not asked any more. */
const fitsAsSaid = ({ fits = [] }: ShelfPart, { part, step }: WantedPart): boolean =>
  fits.some((fit) => fit.fitted === part && isStep(fit.step, step));

const fitsByWords = (
  { number, description, fits = [] }: ShelfPart,
  { part, step, models }: WantedPart,
): boolean =>
  fits.length === 0 &&
  nameOf(fold(description)) === part &&
  isStep(stepIn(description), step) &&
  models.some((model) => names(`${description} ${number}`, model));

/**
 * The parts that are wanted: those that somebody said fit, then those of that name and step (mm) that name
 * one of the models; of each kind those on the shelf first. A variant's parts may name its family.
 */
export const fittingParts = <Part extends ShelfPart>(
  parts: readonly Part[],
  wanted: WantedPart,
): Part[] =>
  [fitsAsSaid, fitsByWords].flatMap((isMeant) =>
    parts.filter((part) => isMeant(part, wanted)).toSorted((a, b) => b.onHand - a.onHand),
  );

/** The oversizes, mm, that pistons for the models are kept in. */
export const oversizesKept = (parts: readonly ShelfPart[], models: readonly string[]): number[] => [
  ...new Set(
    parts
      .flatMap(({ description, fits = [] }) => [
        stepIn(description),
        ...fits.map(({ step }) => step),
      ])
      .filter(
        (step) => step > 0 && fittingParts(parts, { part: 'piston', step, models }).length > 0,
      ),
  ),
];
