import type { Line } from '../../../shared/contract/till/index.ts';

/** What was billed, as a beginning for what was done: work first, then the parts by name. */
export function billedWork(lines: readonly Pick<Line, 'kind' | 'description'>[]): string {
  const work = lines
    .filter(({ kind }) => kind === 'labour' || kind === 'outside')
    .map(({ description }) => description.replace(/\.$/, ''));
  const fitted = lines
    .filter(({ kind }) => kind === 'part')
    .map(({ description }) => description.replace(/\.$/, ''));
  return [
    work.length > 0 ? `${work.join('. ')}.` : '',
    fitted.length > 0 ? `Parts fitted: ${fitted.join(', ')}.` : '',
  ]
    .filter(Boolean)
    .join('\n');
}
