import { standingDecisions } from '../../../db/queries/decisions.ts';
import type { ReadStore } from '../../../db/store.ts';
import { displayNumber } from '../../../shared/trade/index.ts';
import { partLabel } from '../../../shared/work/bench/deciding/decision-rules.ts';
import type { DecisionLine } from '../../paper/content.ts';

/** What became of each part, as it stands: part, choice, size, reason, who and when. */
export const decisionLines = (
  store: ReadStore,
  jobId: string,
  { cylinders, bothUnits }: { cylinders: number; bothUnits: boolean },
): DecisionLine[] =>
  standingDecisions(store, jobId).map((decision) => {
    const { choiceLabel, step, machineTo, reason, by, at } = decision;
    return {
      part: partLabel(decision, cylinders),
      choice: step === null ? choiceLabel : `${choiceLabel}, ${displayNumber(step, 'mm')} mm`,
      machineTo: machineTo === null ? '' : sizeWords(machineTo, bothUnits),
      reason,
      by,
      at,
    };
  });

function sizeWords({ low, high }: { low: number; high: number }, bothUnits: boolean): string {
  const within = (unit: 'mm' | 'in') =>
    `${displayNumber(low, unit)} to ${displayNumber(high, unit)} ${unit}`;
  return bothUnits ? `${within('mm')}\n${within('in')}` : within('mm');
}
