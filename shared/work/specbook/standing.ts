import type { SourceKind, Standing } from '../vocabulary.ts';

/** Sources that say what people do, not what the maker found: alone they confirm nothing. */
const HEARSAY: readonly SourceKind[] = ['common-practice', 'heard-or-found'];

/**
 * The standing of a specification, from the source it was entered with and the confirmations it has.
 * Two independent sources that carry weight, or two people who checked it against the source, confirm it;
 * the person who entered it is the first of the two. While another source prints other figures it is never
 * confirmed, whoever vouched for it: the conflict has to be settled by a new revision first.
 */
export function standingOf(facts: {
  sourceId: string;
  sourceKind: SourceKind;
  enteredBy: string;
  confirmations: readonly { sourceId: string; sourceKind: SourceKind; by: string }[];
  /** Another source prints other figures, and nobody has settled which are right. */
  contradicted: boolean;
}): Standing {
  const witnesses = [
    { sourceId: facts.sourceId, sourceKind: facts.sourceKind, by: facts.enteredBy },
    ...facts.confirmations,
  ].filter((witness) => !HEARSAY.includes(witness.sourceKind));
  if (witnesses.length === 0) return 'unconfirmed';
  const sources = new Set(witnesses.map((witness) => witness.sourceId));
  const people = new Set(witnesses.map((witness) => witness.by));
  if (facts.contradicted) return 'single-source';
  return sources.size > 1 || people.size > 1 ? 'confirmed' : 'single-source';
}
