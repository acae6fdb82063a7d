import type { Diagnosis, Finding } from '../../../shared/contract/bench/index.ts';
import {
  type Check,
  type Found,
  isMeasuredCheck,
  type WorkWanted,
} from '../../../shared/work/bench/diagnosis.ts';
import type { TypedFigure } from '../../../shared/work/bench/diagnosis-figures.ts';
import type { LeakPath } from '../../../shared/work/bench/test-run.ts';

/** What stands in the fields of a check before it is noted. */
export interface FindingDraft {
  found: Found | null;
  /** By cylinder. */
  figures: readonly { text: string; path: LeakPath }[];
  pressureUnit: 'kPa' | 'psi';
  words: string;
  work: readonly WorkWanted[];
}

export const EMPTY_FINDING: FindingDraft = {
  found: null,
  figures: [],
  pressureUnit: 'psi',
  words: '',
  work: [],
};

/** The fields as they were when it was noted, for a correction. */
export function draftOf({ found, figures, words, work }: Finding): FindingDraft {
  const most = Math.max(0, ...figures.map(({ cylinder }) => cylinder));
  return {
    found,
    figures: Array.from({ length: most }, (_, index) => {
      const figure = figures.find(({ cylinder }) => cylinder === index + 1);
      return { text: figure?.text ?? '', path: figure?.path ?? 'none' };
    }),
    pressureUnit: figures.some(({ unit }) => unit === 'kPa') ? 'kPa' : 'psi',
    words,
    work,
  };
}

/** One figure for each cylinder of a check that is read from a gauge; none for any other. */
export function typedFigures(
  check: Check,
  { figures, pressureUnit }: FindingDraft,
  cylinders: number,
): TypedFigure[] {
  if (!isMeasuredCheck(check)) return [];
  const isLeak = check === 'leak-down';
  return Array.from({ length: cylinders }, (_, index) => ({
    cylinder: index + 1,
    text: figures[index]?.text ?? '',
    unit: isLeak ? ('%' as const) : pressureUnit,
    path: isLeak ? (figures[index]?.path ?? 'none') : null,
  }));
}

/** Lines without words are left out. */
export const workOf = ({ found, work }: FindingDraft): WorkWanted[] =>
  found === 'wants-work'
    ? work.flatMap(({ kind, description }) =>
        description.trim() === '' ? [] : [{ kind, description: description.trim() }],
      )
    : [];

/** What stands on a check; several on what else was seen. */
export const standingOn = ({ findings }: Diagnosis, check: Check): Finding[] =>
  findings.filter((finding) => finding.check === check);
