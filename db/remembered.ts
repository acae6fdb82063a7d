import { sql } from 'drizzle-orm';
import { prepared } from './prepared.ts';
import type { ReadStore } from './store.ts';

/** What one call asks again fits in; a list of every job there is shall not be kept whole. */
const MOST_KEPT = 100;

/** How many transactions of a store were taken back. */
const takenBack = new WeakMap<ReadStore, number>();

/** For after a transaction that was taken back: what was read within it was never so. */
export function forgetAnswers(store: ReadStore): void {
  takenBack.set(store, (takenBack.get(store) ?? 0) + 1);
}

// Rows written since the store was opened, those that triggers and foreign keys wrote among them.
const changesOf = prepared((store) =>
  store
    .select({ changes: sql<number>`changes` })
    .from(sql`(select total_changes() as changes)`)
    .prepare(),
);

/** Differs whenever the store may answer differently. */
const momentOf = (store: ReadStore): string =>
  `${changesOf(store).get()?.changes} ${takenBack.get(store)}`;

/**
 * A query whose answer is kept until anything is written: the rules of the bench and of the till each ask for
 * the job, its book and its account, many times in one call. Who asks shares the answer, and must not change it.
 */
export function remembered<T>(
  ask: (store: ReadStore, key: string) => T,
): (store: ReadStore, key: string) => T {
  const memory = new WeakMap<ReadStore, { moment: string; answers: Map<string, { is: T }> }>();
  return (store, key) => {
    const moment = momentOf(store);
    const last = memory.get(store);
    const known = last?.moment === moment && last.answers.size < MOST_KEPT ? last : undefined;
    const answers = known?.answers ?? new Map<string, { is: T }>();
    if (known === undefined) memory.set(store, { moment, answers });
    const answer = answers.get(key) ?? { is: ask(store, key) };
    answers.set(key, answer);
    return answer.is;
  };
}
