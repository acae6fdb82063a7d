import { useLocalStorage } from '@mantine/hooks';
import type { Gauge } from '../../shared/contract/bench/index.ts';
import type { GaugeId } from '../../shared/contract/ids.ts';
import type { SPECIFICATION_UNITS } from '../../shared/contract/specbook.ts';
import { dimensionOf } from '../../shared/trade/index.ts';
import type { MeasuredFeature } from '../../shared/work/features.ts';
import type { Phase } from '../../shared/work/vocabulary.ts';

/** What sticks at this station: the phase, and for each feature the gauge and the unit last used. */

export type BenchUnit = (typeof SPECIFICATION_UNITS)[number];

interface FeatureHabit {
  readonly gaugeId: GaugeId | null;
  readonly unit: BenchUnit | null;
}

const NONE: FeatureHabit = { gaugeId: null, unit: null };

/** The phase that readings are recorded in, kept over jobs until somebody changes it. */
export function usePhase(): [Phase, (phase: Phase) => void] {
  const [phase, setPhase] = useLocalStorage<Phase>({
    key: 'tappet.bench.phase',
    defaultValue: 'as-received',
    getInitialValueInEffect: false,
  });
  return [phase, setPhase];
}

/** Whether a foot switch at this station records by typing a space. */
export const useFootSwitch = () =>
  useLocalStorage<boolean>({
    key: 'tappet.bench.foot-switch',
    defaultValue: false,
    getInitialValueInEffect: false,
  });

/**
 * Gauge and unit of one feature. The first gauge chosen brings its unit with it; a unit that is in use stays,
 * since a figure may stand in the field already.
 */
export function useFeatureHabit(feature: MeasuredFeature, offered: BenchUnit, gauges: Gauge[]) {
  const [habit, setHabit] = useLocalStorage<FeatureHabit>({
    key: `tappet.bench.feature.${feature}`,
    defaultValue: NONE,
    getInitialValueInEffect: false,
  });
  const suited = gauges.filter(({ unit }) => dimensionOf(unit) === dimensionOf(offered));
  const gauge = suited.find(({ id }) => id === habit.gaugeId) ?? null;
  return {
    suited,
    gauge,
    unit: habit.unit ?? gauge?.unit ?? offered,
    chooseGauge: (chosen: Gauge | null) =>
      setHabit({ gaugeId: chosen?.id ?? null, unit: habit.unit ?? chosen?.unit ?? null }),
    chooseUnit: (unit: BenchUnit) => setHabit({ ...habit, unit }),
  };
}
