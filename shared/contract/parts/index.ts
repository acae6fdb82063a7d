import { movements } from './movements.ts';
import { pricing } from './pricing.ts';
import { shelf } from './shelf.ts';

export * from './movements.ts';
export * from './part.ts';
export * from './refusals.ts';

/** The parts room: what is on the shelf, promised and on order. Quantities are whole thousandths of a part's unit. */
export const parts = { ...shelf, ...pricing, ...movements };
