import type { Fastener, Source } from '../../shared/contract/specbook.ts';
import { classWords, threadWords } from '../../shared/work/specbook/fastener-words.ts';
import { SOURCE_KIND_LABELS } from '../../shared/work/vocabulary.ts';

/** A source in one line: kind, title, edition, page. */
export const sourceWords = (source: Source, page: string): string =>
  [
    `${SOURCE_KIND_LABELS[source.kind]}: ${source.title}`,
    source.edition,
    page === '' ? '' : `page\u00A0${page}`,
  ]
    .filter((words) => words !== '')
    .join(', ');

export const PATTERN_LABELS: Record<Fastener['pattern'], string> = {
  cross: 'cross (bolts in a ring)',
  spiral: 'spiral (two rows)',
  'in-line': 'in line (one row)',
};

/** Stages as shares of the final torque: `50 %, 75 %, 100 %`. */
const stagesWords = (stages: readonly number[]): string =>
  stages.map((share) => `${Math.round(share * 1000) / 10}\u00A0%`).join(', ');

/** A fastener group in one line. */
export const fastenerWords = (fastener: Fastener): string =>
  `${fastener.count} bolts, ${threadWords(fastener)}, ${classWords(fastener.propertyClass)}, ${PATTERN_LABELS[fastener.pattern]}, stages ${stagesWords(fastener.stages)}`;
