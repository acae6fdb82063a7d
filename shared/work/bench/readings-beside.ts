import type { MeasuredFeature, Place } from '../features.ts';
import type { Phase } from '../vocabulary.ts';

/** The readings that one is held against besides its band: two legs of a coil, a bore at its depths. */

type PlaceOfReading = Pick<Place, 'key' | 'cylinder' | 'share'>;

export interface BesideWhat {
  feature: MeasuredFeature;
  place: PlaceOfReading;
  places: readonly PlaceOfReading[];
  phase: Phase;
  readings: readonly {
    feature: MeasuredFeature;
    place: string;
    phase: Phase;
    superseded: boolean;
    valueBase: number;
  }[];
}

/** Features whose places are not of one size: closed and open are far apart by nature. */
const NOT_OF_ONE_SIZE: readonly MeasuredFeature[] = ['valve-travel-intake', 'valve-travel-exhaust'];

/**
 * What stands at the other places of the same cylinder or coil in the phase, base unit, each brought to the
 * share of this place: half the torque at the first stage answers for the whole at the last.
 */
export function readingsBeside({ feature, place, places, phase, readings }: BesideWhat): number[] {
  if (NOT_OF_ONE_SIZE.includes(feature)) return [];
  return readings.flatMap((reading) => {
    const at = places.find(({ key }) => key === reading.place);
    return at !== undefined &&
      at.key !== place.key &&
      at.cylinder === place.cylinder &&
      reading.feature === feature &&
      reading.phase === phase &&
      !reading.superseded
      ? [(reading.valueBase / at.share) * place.share]
      : [];
  });
}
