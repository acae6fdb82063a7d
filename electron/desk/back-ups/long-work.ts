import type { Tell } from '../../../db/back-ups/trouble.ts';
import type { Store } from '../../../db/store.ts';
import type { LongWork } from '../../../shared/contract/back-ups.ts';
import type { LongWorkId } from '../../../shared/contract/ids.ts';
import type { LongWorkKind, LongWorkStep } from '../../../shared/work/office/back-ups.ts';
import { refusalFor, Stopped } from './refusals.ts';

/** A work that goes on in this process while other calls are answered. */
export interface Work {
  card: LongWork;
  /** Whether the program does it by itself, once a day. */
  daily: boolean;
  /** Set by whoever wants it stopped. */
  stopped: boolean;
  /** What ended it before its time. */
  failure: unknown;
  ended: Promise<void>;
}

const works = new WeakMap<Store, Map<string, Work>>();

/** The works on the back-ups of a store, by id, in the order in which they were begun. */
export function worksOf(store: Store): Map<string, Work> {
  const known = works.get(store) ?? new Map<string, Work>();
  works.set(store, known);
  return known;
}

/** There is one at a time. */
export const workUnderWay = (store: Store): Work | undefined =>
  [...worksOf(store).values()].findLast(({ card }) => card.state === 'running');

/** Begins a work, and answers at once; `run` says in `work.card` how far it is and what came of it. */
export function beginWork(
  store: Store,
  what: { id: LongWorkId; kind: LongWorkKind; daily?: boolean },
  run: (work: Work) => Promise<void>,
): Work {
  const { id, kind, daily = false } = what;
  const work: Work = {
    card: {
      id,
      kind,
      state: 'running',
      step: 'copying',
      share: 0,
      backUp: null,
      found: null,
      trouble: null,
    },
    daily,
    stopped: false,
    failure: undefined,
    ended: Promise.resolve(),
  };
  worksOf(store).set(id, work);
  work.ended = run(work)
    .then(() => {
      work.card.state = 'done';
    })
    .catch((error: unknown) => {
      const refusal = refusalFor(error);
      if (refusal === undefined)
        process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
      const { code, message } = refusal ?? UNEXPECTED;
      work.failure = refusal ?? error;
      work.card.state = error instanceof Stopped ? 'stopped' : 'failed';
      work.card.trouble = { code, message };
    });
  return work;
}

const UNEXPECTED = {
  code: 'UNEXPECTED',
  message: 'Something went wrong inside Tappet, and nothing was changed. Try again.',
};

/**
 * How a step says how far it is.
 * @param from where within the step it begins, and where it ends
 */
export const tellOf =
  (work: Work, step: LongWorkStep, from = 0, to = 1): Tell =>
  (share) => {
    if (work.stopped) throw new Stopped();
    Object.assign(work.card, { step, share: from + (to - from) * share });
  };

/** Waits for the end of a work, and throws what ended it before its time. */
export async function outcomeOf(work: Work): Promise<LongWork> {
  await work.ended;
  if (work.card.state !== 'done') throw work.failure;
  return work.card;
}

/** Stops what is under way, and waits for it: the store is about to be closed. */
export async function endWork(store: Store): Promise<void> {
  const work = workUnderWay(store);
  if (work === undefined) return;
  work.stopped = true;
  await work.ended;
}
