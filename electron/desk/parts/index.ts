import { move } from './move.ts';
import { shelf } from './part.ts';
import { reprice } from './pricing.ts';

export const parts = { ...shelf, reprice, move };
