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

type Head = Pick<Fastener, 'count' | 'pattern'>;

const WIDTH = 220;
const CENTRE = 104;
const RING = 78;
const ROWS = { upper: 52, lower: 156 } as const;

/** The longer of two rows, which is the first. */
const rowOf = (count: number): number => Math.ceil(count / 2);

function spotOf(index: number, { count, pattern }: Head): [number, number] {
  if (pattern === 'in-line') return [((index + 0.5) / count) * WIDTH, CENTRE];
  if (pattern === 'spiral') {
    const row = rowOf(count);
    return [(((index % row) + 0.5) / row) * WIDTH, index < row ? ROWS.upper : ROWS.lower];
  }
  const angle = (index / count) * 2 * Math.PI - Math.PI / 2 - Math.PI / count;
  return [WIDTH / 2 + RING * Math.cos(angle), CENTRE + RING * Math.sin(angle)];
}

/** How large a bolt may be drawn without touching its neighbour. */
export function boltRadius({ count, pattern }: Head): number {
  const apart =
    pattern === 'cross'
      ? 2 * RING * Math.sin(Math.PI / Math.max(count, 2))
      : WIDTH / (pattern === 'spiral' ? rowOf(count) : count);
  return Math.min(19, apart * 0.44);
}

/** Where the bolts of a head are drawn and in which turn each is tightened; none for an absurd count. */
export function boltSpots(head: Head): BoltSpot[] {
  if (!Number.isInteger(head.count) || head.count < 1 || head.count > 24) return [];
  return tighteningOrder(head.count, head.pattern)
    .map((bolt, index) => {
      const [x, y] = spotOf(bolt - 1, head);
      return { bolt, turn: index + 1, x, y };
    })
    .toSorted((a, b) => a.bolt - b.bolt);
}
