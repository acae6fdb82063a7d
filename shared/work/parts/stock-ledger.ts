import { divideRounded } from '../../money/index.ts';

/**
 * The rules of the stock ledger. A movement adds to the shelf, to its worth, to what is promised to a job
 * and to what suppliers owe; each of the four is the sum of its movements and kept nowhere else.
 * Quantities are whole thousandths of the part's unit, worth is whole minor units.
 *
 * What leaves takes its share of the worth at the moving average, and the last of it takes all, so that
 * there is no worth without stock. A shelf below nothing is worth nothing: of what then comes in, only
 * what stays on the shelf adds to its worth, since the rest had left before.
 */

/** What the movements of one part come to. */
export interface Shelf {
  onHand: number;
  promised: number;
  onOrder: number;
  worth: number;
}

/** What one movement adds, signed. */
export interface MovementEffect {
  quantity: number;
  worth: number;
  reserved: number;
  ordered: number;
}

export const EMPTY_SHELF: Shelf = { onHand: 0, promised: 0, onOrder: 0, worth: 0 };

/** What can be promised or issued without taking it from a job that it is promised to. */
export const available = ({ onHand, promised }: Pick<Shelf, 'onHand' | 'promised'>): number =>
  onHand - promised;

export const afterEffect = (shelf: Shelf, effect: MovementEffect): Shelf => ({
  onHand: shelf.onHand + effect.quantity,
  promised: shelf.promised + effect.reserved,
  onOrder: shelf.onOrder + effect.ordered,
  worth: shelf.worth + effect.worth,
});

/**
 * `amount` × `part` ÷ `whole` to the nearest whole number, halves away from zero; exact at any size.
 * @param whole above zero
 */
export const shareOf = (amount: number, part: number, whole: number): number =>
  Number(divideRounded(BigInt(amount) * BigInt(part), BigInt(whole), 'half-up'));

/** What a quantity costs at a price for one unit. */
export const costAt = (unitCost: number, quantity: number): number =>
  shareOf(unitCost, quantity, 1000);

/** The moving average of one unit; null for a shelf that holds nothing. */
export const averageCost = ({ onHand, worth }: Pick<Shelf, 'onHand' | 'worth'>): number | null =>
  onHand > 0 ? shareOf(worth, 1000, onHand) : null;

/** The worth that a quantity takes along when it leaves. */
function worthLeaving({ onHand, worth }: Shelf, quantity: number): number {
  if (onHand <= 0) return 0;
  return quantity >= onHand ? worth : shareOf(worth, quantity, onHand);
}

/** What a quantity that comes in for `cost` adds to the worth: all of it, unless the shelf was below nothing. */
function worthArriving({ onHand }: Shelf, quantity: number, cost: number): number {
  if (onHand >= 0) return cost;
  const stays = onHand + quantity;
  return stays <= 0 ? 0 : shareOf(cost, stays, quantity);
}

/** What went to a job and has not come back. */
export interface IssuedToJob {
  quantity: number;
  worth: number;
}

/** Unused parts come back at what they were issued at; the last of them brings all that is left of it. */
const worthComingBack = ({ quantity: issued, worth }: IssuedToJob, quantity: number) =>
  quantity >= issued ? worth : shareOf(worth, quantity, issued);

/** What happened to a shelf. Quantities are above zero, but for what was found or missed. */
export type StockEvent =
  | { kind: 'received'; quantity: number /** Of all of it. */; cost: number }
  | { kind: 'issued' | 'scrapped' | 'reserved' | 'released'; quantity: number }
  | { kind: 'returned'; quantity: number }
  | { kind: 'counted' | 'adjusted' /** Found, or missed below zero. */; difference: number }
  | { kind: 'ordered' | 'order-closed'; quantity: number }
  /** A kit leaves the shelf below zero; its piece comes for its share of the kit's worth. */
  | { kind: 'kit-opened'; difference: number; cost: number };

/** What an event's effect depends on beside the shelf. */
export interface EventFacts {
  /** What one unit costs the shop, as far as anybody knows; for what is found on an empty shelf. */
  unitCost: number;
  /** What went to the event's job of this part and has not come back. */
  issuedToJob: IssuedToJob;
  /** What of this part is promised to the event's job. */
  promisedToJob: number;
  /** What the supplier still owes on the event's order line. */
  owedOnLine: number;
}

export const NO_FACTS: EventFacts = {
  unitCost: 0,
  issuedToJob: { quantity: 0, worth: 0 },
  promisedToJob: 0,
  owedOnLine: 0,
};

const nothing: MovementEffect = { quantity: 0, worth: 0, reserved: 0, ordered: 0 };

/** From a sum that may be zero to what is taken off it: never minus zero, which is another number. */
const less = (amount: number): number => (amount === 0 ? 0 : -amount);

const leaving = (shelf: Shelf, quantity: number): MovementEffect => ({
  ...nothing,
  quantity: less(quantity),
  worth: less(worthLeaving(shelf, quantity)),
});

const arriving = (shelf: Shelf, quantity: number, cost: number): MovementEffect => ({
  ...nothing,
  quantity,
  worth: worthArriving(shelf, quantity, cost),
});

/** What an event adds to a shelf. It refuses nothing: whether the shelf holds so much is the caller's to ask. */
export function effectOf(event: StockEvent, shelf: Shelf, facts: EventFacts): MovementEffect {
  switch (event.kind) {
    case 'received':
      return {
        ...arriving(shelf, event.quantity, event.cost),
        ordered: less(Math.min(event.quantity, facts.owedOnLine)),
      };
    case 'issued':
      return {
        ...leaving(shelf, event.quantity),
        reserved: less(Math.min(event.quantity, facts.promisedToJob)),
      };
    case 'returned':
      return arriving(shelf, event.quantity, worthComingBack(facts.issuedToJob, event.quantity));
    case 'scrapped':
      return leaving(shelf, event.quantity);
    case 'counted':
    case 'adjusted':
      return event.difference < 0
        ? leaving(shelf, -event.difference)
        : arriving(shelf, event.difference, foundCost(shelf, event.difference, facts.unitCost));
    case 'reserved':
      return { ...nothing, reserved: event.quantity };
    case 'released':
      return { ...nothing, reserved: less(event.quantity) };
    case 'ordered':
      return { ...nothing, ordered: event.quantity };
    case 'order-closed':
      return { ...nothing, ordered: less(event.quantity) };
    case 'kit-opened':
      return event.difference < 0
        ? {
            ...leaving(shelf, -event.difference),
            reserved: less(Math.min(-event.difference, facts.promisedToJob)),
          }
        : arriving(shelf, event.difference, event.cost);
  }
}

/** What is found is worth what the rest of the shelf is worth; on an empty shelf, what such a part costs. */
const foundCost = (shelf: Shelf, quantity: number, unitCost: number): number =>
  shelf.onHand > 0 ? shareOf(shelf.worth, quantity, shelf.onHand) : costAt(unitCost, quantity);
