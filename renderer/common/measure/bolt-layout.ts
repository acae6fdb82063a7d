import type { Fastener } from '../../../shared/contract/specbook.ts';
import { tighteningOrder } from '../../../shared/trade/index.ts';

export interface BoltSpot {
  /** The bolt's own number on the head. */
  readonly bolt: number;
  /** When it is tightened, from 1. */
  readonly turn: number;
  readonly x: number;
  readonly y: number;
}

const WIDTH = 220;
const CENTRE = 104;

function spotOf(index: number, count: number, pattern: Fastener['pattern']): [number, number] {
  if (pattern === 'in-line') return [((index + 0.5) / count) * WIDTH, CENTRE];
  if (pattern === 'spiral') {
    const row = count / 2;
    return [(((index % row) + 0.5) / row) * WIDTH, index < row ? 52 : 156];
  }
  const angle = (index / count) * 2 * Math.PI - Math.PI / 2 - Math.PI / count;
  return [WIDTH / 2 + 78 * Math.cos(angle), CENTRE + 78 * Math.sin(angle)];
}

/** Where the bolts of a head are drawn and in which turn each is tightened; none when they can't be. */
export function boltSpots({ count, pattern }: Pick<Fastener, 'count' | 'pattern'>): BoltSpot[] {
  try {
    return tighteningOrder(count, pattern)
      .map((bolt, index) => {
        const [x, y] = spotOf(bolt - 1, count, pattern);
        return { bolt, turn: index + 1, x, y };
      })
      .toSorted((a, b) => a.bolt - b.bolt);
  } catch {
    // An odd count in two rows has no order of this pattern; the screen then says so in words.
    return [];
  }
}
