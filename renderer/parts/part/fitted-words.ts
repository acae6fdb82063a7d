import type { Fit } from '../../../shared/contract/parts/index.ts';
import { FITTED_PART_LABELS } from '../../../shared/work/bench/deciding/decision-parts.ts';

/** What a part is on an engine, in words: `Piston, +0.5 mm`. */
export function fittedWords({ fitted, step }: Pick<Fit, 'fitted' | 'step'>): string {
  const what = fitted === 'other' ? 'Something else' : FITTED_PART_LABELS[fitted];
  if (step === 0) return what;
  return `${what}, ${step > 0 ? '+' : '−'}${Math.abs(step)}\u00A0mm`;
}
