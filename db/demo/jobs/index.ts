import { EARLIEST_JOBS } from './earliest-jobs.ts';
import { LATER_JOBS } from './later-jobs.ts';
import { OPEN_JOBS } from './open-jobs.ts';
import type { JobStory } from './story.ts';

export {
  checksOf,
  type JobStory,
  type Scope,
  type StoryEstimate,
  type StoryLine,
} from './story.ts';

/** Forty jobs over eight months. */
export const DEMO_JOBS: readonly JobStory[] = [...EARLIEST_JOBS, ...LATER_JOBS, ...OPEN_JOBS];
