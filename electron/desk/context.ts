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
};
