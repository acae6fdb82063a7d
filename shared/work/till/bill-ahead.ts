import { type DiscountRule, SECURITY } from '../../money/index.ts';

/**
 * What a bill is heading to: the work that is estimated, and what came to it since at the bench and from the
 * shelf. Quantities are whole thousandths, money integer minor units.
 */

/** Why something comes to the bill that the estimate doesn't hold. */
export const BEYOND_BECAUSE = ['found', 'decided', 'issued', 'clocked'] as const;
export type BeyondBecause = (typeof BEYOND_BECAUSE)[number];

export const BEYOND_BECAUSE_LABELS: Record<BeyondBecause, string> = {
  found: 'Found at the diagnosis',
  decided: 'Decided at the bench',
  issued: 'Issued from the shelf',
  clocked: 'Clocked beyond what is estimated',
};

/** A line as far as it is compared. */
export interface WantedLine {
  readonly kind: string;
  readonly description: string;
  readonly partId: string | null;
  readonly quantity: number;
  readonly unit: string;
  readonly discount?: DiscountRule | null;
}

interface ToPrice<Line> {
  readonly line: Line;
  readonly priceToSet: boolean;
}

/** What came to the job since its estimate. */
export interface SinceEstimate<Line> {
  /** What the diagnosis found since; a price that is to be set stands as 0, and is not known. */
  readonly found: readonly ToPrice<Line>[];
  /** What follows from decisions taken since. */
  readonly decided: readonly ToPrice<Line>[];
  /** Parts that went to the job, less what came back; one line a part. */
  readonly issued: readonly Line[];
  /** All hours that were clocked on the job. */
  readonly clocked: number;
  /** The same hours as lines at the shop's own rates, where they are what will be charged. */
  readonly hours: readonly Line[];
  /** What a part is charged until its old one comes back, for as many; null for a part without it. */
  readonly coreOf: (part: Line) => Line | null;
}

export interface Beyond<Line> {
  line: Line;
  because: BeyondBecause;
  priceToSet: boolean;
  /** How much of the same stands before it, thousandths. */
  held: number;
}

/** The unit of labour that is charged by the hour. */
const HOUR = 'h';

/**
 * What comes to the bill beyond the lines that are estimated. A part that was decided on and then issued counts
 * once, and only as far as the estimate holds fewer; it brings its core charge along, which counts until a
 * credit for the old part is on the bill. Clocked hours count where all labour is by the hour: at the price of
 * the estimated line with most of them, of which an amount off is not taken off again, or at the shop's rates.
 */
export function beyondEstimate<Line extends WantedLine>(
  estimated: readonly Line[],
  { found, decided, issued, clocked, hours, coreOf }: SinceEstimate<Line>,
): Beyond<Line>[] {
  const beyond: Beyond<Line>[] = [];
  const billed = () => [...estimated, ...beyond.map(({ line }) => line)];
  const heldOf = (line: Line) => quantityOf(billed().filter((other) => isSameWork(other, line)));
  const add = (line: Line, because: BeyondBecause, priceToSet = false) =>
    beyond.push({ line, because, priceToSet, held: heldOf(line) });
  const addMissing = (wanted: Line, because: BeyondBecause, priceToSet = false) => {
    const quantity = wanted.quantity - heldOf(wanted);
    if (quantity <= 0) return;
    const line = { ...wanted, quantity };
    add(line, because, priceToSet);
    const core = coreOf(line);
    if (core !== null) add(core, because);
  };
  for (const { line, priceToSet } of found) addMissing(line, 'found', priceToSet);
  for (const { line, priceToSet } of decided) addMissing(line, 'decided', priceToSet);
  for (const line of issued) addMissing(line, 'issued');
  for (const line of hoursBeyond(estimated, billed(), { clocked, hours })) add(line, 'clocked');
  return beyond;
}

function hoursBeyond<Line extends WantedLine>(
  estimated: readonly Line[],
  billed: readonly Line[],
  { clocked, hours }: Pick<SinceEstimate<Line>, 'clocked' | 'hours'>,
): Line[] {
  const labour = billed.filter(isLabour);
  const quantity = clocked - quantityOf(labour);
  if (quantity <= 0 || labour.some(({ unit }) => unit !== HOUR)) return [];
  const byMost = (lines: readonly Line[]) =>
    lines.filter(isLabour).toSorted((a, b) => b.quantity - a.quantity);
  const [most] = byMost(estimated);
  if (most !== undefined)
    return [{ ...most, quantity, ...(most.discount?.by === 'amount' && { discount: null }) }];
  let left = quantity;
  return byMost(hours).flatMap((line) => {
    const these = Math.min(line.quantity, left);
    left -= these;
    return these > 0 ? [{ ...line, quantity: these }] : [];
  });
}

const isLabour = ({ kind }: WantedLine): boolean => kind === 'labour';

const quantityOf = (lines: readonly WantedLine[]): number =>
  lines.reduce((sum, { quantity }) => sum + quantity, 0);

type Named = Pick<WantedLine, 'kind' | 'description' | 'partId'>;

/**
 * The same part, or for what is no part the same words. A core is security for an old part, and names the part
 * without being one.
 */
export const isSameWork = (a: Named, b: Named): boolean =>
  SECURITY.includes(a.kind) || SECURITY.includes(b.kind)
    ? a.kind === b.kind && a.description === b.description
    : b.partId === null
      ? a.description === b.description
      : a.partId === b.partId;

export interface Agreed {
  /** What the bill is heading to at least: lines without a price are left out. */
  readonly total: number;
  /** What it may come to without asking again. */
  readonly limit: number;
  /** Something was agreed or put to the customer: a spending limit, an estimate, a decision that costs. */
  readonly asked: boolean;
  /** The bill is issued: there is nothing left to stop. */
  readonly billed: boolean;
}

/**
 * Whether work waits for the customer. It does when the bill is heading past the limit; not where nothing was
 * ever agreed or estimated, since there is no figure yet that anybody could have approved.
 */
export const waitsForApproval = ({ total, limit, asked, billed }: Agreed): boolean =>
  !billed && asked && total > limit;
