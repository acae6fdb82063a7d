import { findingsOf } from '../../../db/queries/findings.ts';
import type { ReadStore } from '../../../db/store.ts';
import { CHECK_LABELS, FOUND_LABELS } from '../../../shared/work/bench/diagnosis.ts';
import { figureLines } from '../../../shared/work/bench/diagnosis-words.ts';
import type { FindingLine } from '../../paper/content.ts';

/** What the diagnosis found, as it stands: figures as measured, then words. */
export const findingLines = (store: ReadStore, jobId: string): FindingLine[] =>
  findingsOf(store, jobId).standing.map(({ check, found, figures, words, by, at }) => ({
    check: CHECK_LABELS[check],
    outcome: found,
    found: FOUND_LABELS[found],
    // Ordinary spaces on paper: a program that looks for `85 psi` finds it.
    seen: [...figureLines(figures), words].filter(Boolean).join('\n').replaceAll('\u00a0', ' '),
    by,
    at,
  }));
