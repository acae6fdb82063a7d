import { useLocalStorage } from '@mantine/hooks';
import type { Gauge } from '../../../shared/contract/bench/index.ts';
import type { GaugeId } from '../../../shared/contract/ids.ts';
import { dimensionOf } from '../../../shared/trade/index.ts';

interface Hand {
  readonly gaugeId: GaugeId | null;
  /** mm from the square drive to the bolt; 0 without an extension. */
  readonly extension: number;
  /** Degrees, 0 straight out. */
  readonly angle: number;
  /** mm from the grip's mark to the square drive, as typed here; null for the register's. */
  readonly length: number | null;
}

const EMPTY_HAND: Hand = { gaugeId: null, extension: 0, angle: 0, length: null };

export interface WrenchInUse extends Omit<Hand, 'gaugeId'> {
  readonly gauge: Gauge | null;
  readonly suited: readonly Gauge[];
  readonly change: (change: Partial<Hand>) => void;
}

/** The torque wrench in hand at this station and what sticks on it; kept over steps and jobs. */
export function useWrench(gauges: readonly Gauge[]): WrenchInUse {
  const [{ gaugeId, ...hand }, setHand] = useLocalStorage<Hand>({
    key: 'tappet.bench.wrench',
    defaultValue: EMPTY_HAND,
    getInitialValueInEffect: false,
  });
  const suited = gauges.filter(({ unit }) => dimensionOf(unit) === dimensionOf('N·m'));
  const gauge = suited.find(({ id }) => id === gaugeId) ?? null;
  return {
    ...hand,
    length: hand.length ?? gauge?.length ?? null,
    suited,
    gauge,
    change: (change) => setHand({ gaugeId, ...hand, ...change }),
  };
}
