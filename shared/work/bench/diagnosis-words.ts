import { display, displayNumber } from '../../trade/index.ts';
import type { Check, CheckFigure } from './diagnosis.ts';
import { LEAK_PATH_LABELS } from './test-run.ts';
import { compareCompression, judgeLeak } from './test-run-rules.ts';
import { compressionSentence } from './test-run-words.ts';

/** Figures of a diagnosis in words, as screens and papers say them. */

function figureWords({ unit, base, path }: CheckFigure): string {
  if (path !== null)
    return `${displayNumber(base, '%')} %, ${LEAK_PATH_LABELS[path].toLowerCase()}`;
  const [first, other] = unit === 'psi' ? (['psi', 'kPa'] as const) : (['kPa', 'psi'] as const);
  return `${display(base, first)} (${display(base, other)})`;
}

/** Every figure, one a line; named by its cylinder unless it is the first and only one. */
export function figureLines(figures: readonly CheckFigure[]): string[] {
  const several = figures.some(({ cylinder }) => cylinder > 1);
  return figures.map((figure) =>
    several ? `Cylinder ${figure.cylinder}: ${figureWords(figure)}` : figureWords(figure),
  );
}

/** What the figures say together. A figure alone condemns nothing; it says where to look. */
export function figureRemarks(check: Check, figures: readonly CheckFigure[]): string[] {
  if (check === 'leak-down')
    return figures.flatMap(({ base, path }) =>
      path === null ? [] : [judgeLeak({ percent: base, path }).sentence],
    );
  const compared = compareCompression(figures.map(({ base }) => base));
  return check === 'compression' && compared !== null ? [compressionSentence(compared)] : [];
}
