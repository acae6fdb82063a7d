import type { Store } from '../../db/store.ts';
import type { drawPaper } from '../paper/index.ts';

/** What every call of the desk gets besides its input. */
export type DeskContext = {
  store: Store;
  /** The clock, so that tests and the demo shop can set it. */
  now: () => Date;
  /** The PDF service. */
  drawPaper: typeof drawPaper;
  program: { version: string };
  /** The key of the call that arrived, the first time that it is asked for; else null. */
  requestKey?: () => string | null;
  /**
   * Does something while no other call is under way; those that come meanwhile wait.
   * @param own how many of the calls under way are those of whoever asks
   * @throws the declared STORE_BUSY when others don't end
   */
  alone: <T>(work: () => T, own: number) => Promise<T>;
};

/** For a desk that nobody else calls. */
export const undisturbed: DeskContext['alone'] = async (work) => work();
