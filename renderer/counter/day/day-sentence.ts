import type { Day } from './types.ts';

/** The day in a sentence: what a person says who looks up from the list. */
export function daySentence(day: Day): string {
  const { late, today, soon } = day;
  if (late.length + today.length + soon.length === 0)
    return 'Nothing is promised for today or the days ahead.';
  const parts = [
    late.length > 0 ? `${late.length} late` : 'Nothing late',
    today.length > 0 ? `${today.length} promised today` : 'nothing promised today',
    soon.length > 0 ? `${soon.length} in the days ahead` : 'nothing in the days ahead',
  ];
  return `${parts.join(', ')}.`;
}
