import { type DiscountRule, SECURITY } from '../money/index.ts';

/**
 * What a bill is heading to: the work that is estimated, and what came to it since at the bench and from the
 * shelf. Quantities are whole thousandths, money integer minor units.
 */

/** Why something comes to the bill that the estimate doesn't hold. */
export const BEYOND_BECAUSE = ['decided', 'issued', 'clocked'] as const;
export type BeyondBecause = (typeof BEYOND_BECAUSE)[number];

export const BEYOND_BECAUSE_LABELS: Record<BeyondBecause, string> = {
  decided: 'Decided at the bench',
  issued: 'Issued from the shelf',
  clocked: 'Clocked beyond the hours estimated',
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

/** What came to the job since its estimate. */
export interface SinceEstimate<Line> {
  /** What follows from decisions taken since; a price that is to be set stands as 0. */
  readonly decided: readonly { readonly line: Line; readonly priceToSet: boolean }[];
  /** Parts that went to the job, less what came back; one line a part. */
  readonly issued: readonly Line[];
  /** All hours that were clocked on the job. */
  readonly clocked: number;
}

export interface Beyond<Line> {
  line: Line;
  because: BeyondBecause;
  priceToSet: boolean;
}

/** The unit of labour that is charged by the hour. */
const HOUR = 'h';

/**
 * What comes to the bill beyond the lines that are estimated. A part that was decided on and then issued counts
 * once, and only as far as the estimate holds fewer. Clocked hours count where all labour of the estimate is
 * by the hour, at the price of the line with most of them; an amount off that line is not taken off again.
 */
export function beyondEstimate<Line extends WantedLine>(
  estimated: readonly Line[],
  { decided, issued, clocked }: SinceEstimate<Line>,
): Beyond<Line>[] {
  const beyond: Beyond<Line>[] = [];
  const billed = () => [...estimated, ...beyond.map(({ line }) => line)];
  const add = (line: Line, because: BeyondBecause, priceToSet: boolean) => {
    const quantity = line.quantity - quantityOf(billed().filter((other) => isSame(other, line)));
    if (quantity > 0) beyond.push({ line: { ...line, quantity }, because, priceToSet });
  };
  for (const { line, priceToSet } of decided) add(line, 'decided', priceToSet);
  for (const line of issued) add(line, 'issued', false);

  const [most] = estimated.filter(isLabour).toSorted((a, b) => b.quantity - a.quantity);
  const labour = billed().filter(isLabour);
  const quantity = clocked - quantityOf(labour);
  if (most !== undefined && labour.every(({ unit }) => unit === HOUR) && quantity > 0)
    beyond.push({
      line: { ...most, quantity, ...(most.discount?.by === 'amount' && { discount: null }) },
      because: 'clocked',
      priceToSet: false,
    });
  return beyond;
}

const isLabour = ({ kind }: WantedLine): boolean => kind === 'labour';

const quantityOf = (lines: readonly WantedLine[]): number =>
  lines.reduce((sum, { quantity }) => sum + quantity, 0);

/**
 * The same part, or for what is no part the same words. A core is security for an old part, and names the part
 * without being one.
 */
const isSame = (a: WantedLine, b: WantedLine): boolean =>
  !SECURITY.includes(a.kind) &&
  (b.partId === null ? a.description === b.description : a.partId === b.partId);

export interface Agreed {
  /** What the bill is heading to. */
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
