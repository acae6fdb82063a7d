import type { Storage } from '../../../shared/contract/till/index.ts';
import type { JobState } from '../../../shared/work/counter/job-state.ts';

/** Stands wherever the program speaks of money for storage. */
export const LAW_ON_STORAGE =
  'Local law decides whether storage may be charged, after what notice, and what becomes of a machine that nobody collects.';

/** How long a machine has waited for whoever brought it. */
export const waitedWords = (state: JobState, { waited }: Pick<Storage, 'waited'>): string =>
  `${state === 'ready' ? 'Ready to collect' : 'Stopped, and not collected'} for ${
    waited === 1 ? '1 day' : `${waited} days`
  }`;
