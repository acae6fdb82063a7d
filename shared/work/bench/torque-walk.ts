import { tighteningOrder } from '../../trade/index.ts';

/**
 * The walk around a group of bolts: every stage goes round once in the tightening order. What was pulled
 * is kept; where to go on follows from it, so that an interrupted walk starts again where it stopped.
 */

export interface BoltGroup {
  count: number;
  pattern: 'cross' | 'spiral' | 'in-line';
  /** Shares of the final torque, ascending, the last of them 1. */
  stages: readonly number[];
}

export interface Pull {
  /** Counts up when the sequence is begun anew. */
  round: number;
  /** From 1. */
  stage: number;
  /** The bolt's number, from 1. */
  bolt: number;
}

export interface Turn {
  stage: number;
  bolt: number;
}

export interface TorqueWalk {
  round: number;
  /** The bolts in the order in which each stage goes round them. */
  order: number[];
  /** The bolts of each stage that were pulled in this round. */
  pulled: number[][];
  /** Which bolt to which stage now; null when every bolt has had every stage. */
  next: Turn | null;
  done: number;
  of: number;
}

/** The marker of a round that was begun anew and has no pull yet: it belongs to no stage. */
export const ROUND_BEGUN = 0;

/**
 * Where the walk stands after these pulls, oldest first. Only the latest round counts; what belongs to no
 * bolt or stage of the group (the book has another pattern by now) is passed over.
 */
export function torqueWalk(group: BoltGroup, pulls: readonly Pull[]): TorqueWalk {
  const order = tighteningOrder(group.count, group.pattern);
  const round = pulls.reduce((latest, pull) => Math.max(latest, pull.round), 1);
  const pulled = group.stages.map((_, index) => {
    const bolts = new Set(
      pulls.filter((p) => p.round === round && p.stage === index + 1).map(({ bolt }) => bolt),
    );
    return order.filter((bolt) => bolts.has(bolt));
  });
  return {
    round,
    order,
    pulled,
    next: nextTurn(order, pulled),
    done: pulled.reduce((sum, bolts) => sum + bolts.length, 0),
    of: order.length * group.stages.length,
  };
}

function nextTurn(order: readonly number[], pulled: readonly (readonly number[])[]): Turn | null {
  for (const [index, bolts] of pulled.entries()) {
    const bolt = order.find((each) => !bolts.includes(each));
    if (bolt !== undefined) return { stage: index + 1, bolt };
  }
  return null;
}

/** Whether the pull is the one whose turn it is. */
export const isTurn = ({ next }: TorqueWalk, { stage, bolt }: Turn): boolean =>
  next !== null && next.stage === stage && next.bolt === bolt;

/** Of the latest round, the pulls that were made out of turn, oldest first. */
export function outOfTurn(group: BoltGroup, pulls: readonly Pull[]): Pull[] {
  const { round } = torqueWalk(group, pulls);
  const own = pulls.filter((pull) => pull.round === round && pull.stage !== ROUND_BEGUN);
  return own.filter((pull, index) => !isTurn(torqueWalk(group, own.slice(0, index)), pull));
}

/**
 * The nearest mark of a wrench's scale to the setting wanted, both in the wrench's unit.
 * @throws {RangeError} when the resolution isn't above zero
 */
export function nearestMark(setting: number, resolution: number): number {
  if (!(resolution > 0)) throw new RangeError('A scale’s resolution is more than zero.');
  // Through decimal text: seven tenths in steps of 0.1 is 0.7 and not 0.7000000000000001.
  return Number((Math.round(setting / resolution) * resolution).toPrecision(12));
}
