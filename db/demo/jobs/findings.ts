import type { Check, Found, WorkWanted } from '../../../shared/work/bench/diagnosis.ts';
import type { LeakPath } from '../../../shared/work/bench/test-run.ts';

/** What one check of a diagnosis found, as whoever looked would note it. */
export interface StoryFinding {
  check: Check;
  found: Found;
  words: string;
  figures?: readonly { text: string; unit: 'psi' | '%'; path?: LeakPath }[];
  work?: readonly WorkWanted[];
}

export const sound = (check: Check, words = ''): StoryFinding => ({ check, found: 'sound', words });

export const wants = (
  check: Check,
  words: string,
  ...work: readonly WorkWanted[]
): StoryFinding => ({ check, found: 'wants-work', words, work });

/** Cranking pressure by cylinder, psi. */
export const pressed = (found: Found, words: string, ...psi: readonly string[]): StoryFinding => ({
  check: 'compression',
  found,
  words,
  figures: psi.map((text) => ({ text, unit: 'psi' })),
});

/** Leak-down by cylinder, per cent, and where the air was heard to leave. */
export const leaked = (
  found: Found,
  words: string,
  ...leaks: readonly (readonly [percent: string, path: LeakPath])[]
): StoryFinding => ({
  check: 'leak-down',
  found,
  words,
  figures: leaks.map(([text, path]) => ({ text, unit: '%', path })),
});

export const work = (description: string): WorkWanted => ({ kind: 'labour', description });
export const newPart = (description: string): WorkWanted => ({ kind: 'part', description });
