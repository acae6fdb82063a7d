import { FIRST_QUARTER } from './first-quarter.ts';
import { OPEN_JOBS } from './open-jobs.ts';
import { SECOND_QUARTER } from './second-quarter.ts';
import type { JobStory } from './story.ts';

export type { JobStory, Scope, StoryEstimate, StoryLine } from './story.ts';

/** Forty jobs over eight months, oldest first. */
export const DEMO_JOBS: readonly JobStory[] = [...FIRST_QUARTER, ...SECOND_QUARTER, ...OPEN_JOBS];
