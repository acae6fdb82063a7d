import { type Slip, suspectSlip } from '../../trade/index.ts';
import type { MeasuredFeature, Place } from '../features.ts';
import type { Phase } from '../vocabulary.ts';
import { fellowsOf, suspectPairSlip } from './pair-slip.ts';
import type { PlaceBand } from './reading-verdict.ts';

/** Whether a reading has to be asked about before it is kept, and what it was held against. */

export interface Suspected {
  feature: MeasuredFeature;
  /** Base unit. */
  value: number;
  band: PlaceBand;
  place: Pick<Place, 'key' | 'cylinder' | 'share'>;
  places: readonly Pick<Place, 'key' | 'cylinder' | 'share'>[];
  phase: Phase;
  readings: readonly {
    feature: MeasuredFeature;
    place: string;
    phase: Phase;
    superseded: boolean;
    valueBase: number;
  }[];
}

export interface Suspicion {
  /** `likely` in the base unit. */
  slip: Slip | null;
  against: 'band' | 'pair';
  /** The readings beside it that it was held against, base unit; empty when a band was there. */
  fellows: number[];
}

/** A band speaks where there is one; without it the other places of the same cylinder or coil do. */
export function suspicionOf(suspected: Suspected): Suspicion {
  const { feature, value, band, place, places, phase, readings } = suspected;
  if (band.low !== null || band.high !== null)
    return {
      slip: suspectSlip(value, { low: band.low ?? undefined, high: band.high ?? undefined }),
      against: 'band',
      fellows: [],
    };
  const standing = readings.flatMap((reading) => {
    const at = places.find(({ key }) => key === reading.place);
    return reading.feature === feature &&
      reading.phase === phase &&
      !reading.superseded &&
      at !== undefined
      ? [{ place: at.key, cylinder: at.cylinder, share: at.share, value: reading.valueBase }]
      : [];
  });
  const here = { place: place.key, cylinder: place.cylinder, share: place.share };
  const fellows = fellowsOf(feature, here, standing).map(
    (fellow) => (fellow.value / fellow.share) * place.share,
  );
  return { slip: suspectPairSlip(feature, value, fellows), against: 'pair', fellows };
}
