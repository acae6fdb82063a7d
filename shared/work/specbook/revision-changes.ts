import type { Unit } from '../../trade/index.ts';

/** What a revision says, as far as another may say it differently. */
interface Revision {
  low: string;
  high: string;
  aim: string;
  wearLimit: string;
  unit: Unit;
  condition: string;
  page: string;
  source: { id: string };
  fastener: object | null;
}

const FIELDS = ['low', 'high', 'aim', 'wearLimit', 'unit', 'condition', 'page'] as const;

/** The parts of a specification that a revision may change. */
export const REVISED_FIELDS = [...FIELDS, 'source', 'fastener'] as const;
export type RevisedField = (typeof REVISED_FIELDS)[number];

/** What a revision changed in the one before it, in the order in which a source prints it. */
export function changesBetween(former: Revision, next: Revision): RevisedField[] {
  const changed: RevisedField[] = FIELDS.filter((field) => former[field] !== next[field]);
  if (former.source.id !== next.source.id) changed.push('source');
  if (JSON.stringify(former.fastener) !== JSON.stringify(next.fastener)) changed.push('fastener');
  return changed;
}
