import type { PaperCard } from '../../../shared/contract/counter/index.ts';

/** The paper that a row names; it was issued in the transaction that wrote the row. */
export function paperIn(papers: readonly PaperCard[], id: string): PaperCard {
  const paper = papers.find((card) => card.id === id);
  if (paper === undefined) throw new Error(`The paper ${id} is missing from the store.`);
  return paper;
}
