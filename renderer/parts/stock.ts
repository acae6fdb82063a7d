import type { HAND_MOVEMENTS } from '../../shared/contract/parts/index.ts';

export type MovementKind = (typeof HAND_MOVEMENTS)[number];

/** Movements that belong to a job. */
export const NEEDS_JOB: readonly MovementKind[] = ['issued', 'returned'];
/** Movements that somebody will ask about later. */
export const NEEDS_REASON: readonly MovementKind[] = ['scrapped', 'counted'];

export type ShelfLevel = 'none-left' | 'low' | 'enough';

/** How a shelf stands against its reorder point; a part without one is low only when none is left. */
export function shelfLevel(part: { onHand: number; reorderPoint: number }): ShelfLevel {
  if (part.onHand <= 0) return 'none-left';
  return part.reorderPoint > 0 && part.onHand <= part.reorderPoint ? 'low' : 'enough';
}

/** What would be on the shelf after a movement, in thousandths; less than zero is refused. */
export function afterMovement(kind: MovementKind, onHand: number, quantity: number): number {
  if (kind === 'counted') return quantity;
  return kind === 'received' || kind === 'returned' ? onHand + quantity : onHand - quantity;
}
