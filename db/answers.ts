import { and, eq, lt } from 'drizzle-orm';
import { answeredRequest } from './schema/index.ts';
import type { WriteStore } from './store.ts';

/** Answers that may have been lost on their way, so that a call which comes again gets the same and writes nothing. */

const KEPT = 24 * 3_600_000;

interface Request {
  /** Made up by the caller for this one call. */
  key: string;
  /** The procedure, e.g. `counter.takeIn`. */
  what: string;
}

/** The answer as JSON; undefined when this request was not answered within the last day. */
export const answerTo = (store: WriteStore, { key, what }: Request): string | undefined =>
  store
    .select({ answer: answeredRequest.answer })
    .from(answeredRequest)
    .where(and(eq(answeredRequest.key, key), eq(answeredRequest.what, what)))
    .get()?.answer;

/** Keeps an answer, and lets go of those that nobody will ask for any more. */
export function keepAnswer(store: WriteStore, request: Request, answer: unknown, now: Date): void {
  store
    .delete(answeredRequest)
    .where(lt(answeredRequest.at, new Date(now.getTime() - KEPT).toISOString()))
    .run();
  store
    .insert(answeredRequest)
    .values({ ...request, answer: JSON.stringify(answer ?? null), at: now.toISOString() })
    .onConflictDoNothing()
    .run();
}
