import type { Reading } from '../../../shared/contract/bench/index.ts';
import type { Specification } from '../../../shared/contract/specbook.ts';
import { isTorque } from '../../../shared/work/bench/torque-check.ts';
import type { Place } from '../../../shared/work/features.ts';

/** What share of the final torque a reading was held against, as its own band tells; 1 for all else. */
function shareOf(reading: Reading, used: readonly Specification[]): number {
  const held = used.find(({ id }) => id === reading.specificationId);
  if (held === undefined || !isTorque(reading.feature)) return 1;
  const sides = [
    [reading.low, held.lowBase],
    [reading.high, held.highBase],
  ] as const;
  for (const [own, whole] of sides)
    if (own !== null && whole !== null && whole > 0) return Number((own / whole).toPrecision(4));
  return 1;
}

/**
 * Places with readings that the engine's entry has no more: the book learnt of other torque stages, or
 * the job was given another engine model. What was measured there stays on the sheet and on paper.
 */
export const formerPlaces = (
  feature: Reading['feature'],
  present: readonly Pick<Place, 'key'>[],
  readings: readonly Reading[],
  used: readonly Specification[],
): Place[] => {
  const known = new Set(present.map(({ key }) => key));
  const former = new Map<string, Place>();
  for (const reading of readings)
    if (reading.feature === feature && !known.has(reading.place))
      former.set(reading.place, {
        key: reading.place,
        label: [reading.placeLabel, 'as it was then'].filter(Boolean).join(', '),
        cylinder: Number(/^c(\d+)-/.exec(reading.place)?.[1] ?? 1),
        share: shareOf(reading, used),
      });
  return [...former.values()];
};
