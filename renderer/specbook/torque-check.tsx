import { Stack, Text } from '@mantine/core';
import {
  display,
  isPropertyClass,
  proofLoad,
  tighteningTorque,
  torquePlausibility,
  type Unit,
} from '../../shared/trade/index.ts';
import type { TypedFastener } from '../../shared/work/bench/torque-check.ts';
import { BandBar } from '../common/measure/band-bar.tsx';

/** What a torque would do to the bolt, as a share of its proof load. */
interface TorqueSense {
  readonly share: number;
  readonly verdict: 'low' | 'plausible' | 'high';
  /** N·m at 0.3 and at 1 of the proof load. */
  readonly low: number;
  readonly high: number;
}

/** Null while thread or class can't be judged by. */
function torqueSense(torque: number, fastener: TypedFastener): TorqueSense | null {
  const { diameter, pitch, propertyClass } = fastener;
  if (!isPropertyClass(propertyClass)) return null;
  try {
    const bolt = { diameter, pitch, propertyClass };
    const proof = proofLoad(bolt);
    const { preloadShareOfProof, verdict } = torquePlausibility({ torque, ...bolt });
    return {
      share: preloadShareOfProof,
      verdict,
      low: tighteningTorque({ diameter, preload: proof * 0.3 }),
      high: tighteningTorque({ diameter, preload: proof }),
    };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return null;
  }
}

const WORDS = {
  low: 'Low: below 0.3. Is the unit right (inch-pounds, foot-pounds), or the thread?',
  plausible: 'Plausible.',
  high: 'High: more than the bolt’s proof load. Is the unit right (inch-pounds, foot-pounds), or the thread?',
} as const;

/** Shows while it is typed whether a torque suits its thread and class. */
export function TorqueCheck({
  torque,
  fastener,
  unit,
}: {
  /** N·m; null while none can be read. */
  readonly torque: number | null;
  readonly fastener: TypedFastener | null;
  readonly unit: Unit;
}) {
  const sense = torque === null || fastener === null ? null : torqueSense(torque, fastener);
  if (torque === null || sense === null)
    return (
      <Text size="sm" c="dimmed">
        With torque, thread and class typed, this says whether they suit each other.
      </Text>
    );
  return (
    <Stack gap={2}>
      <BandBar
        band={sense}
        aim={null}
        value={torque}
        uncertainty={0}
        verdict={sense.verdict === 'plausible' ? 'within' : 'outside'}
        unit={unit}
      />
      <Text aria-live="polite">
        {display(torque, unit)} puts about <strong>{sense.share.toFixed(2)}</strong> of its proof
        load on this bolt. <strong>{WORDS[sense.verdict]}</strong>
      </Text>
      <Text size="sm" c="dimmed">
        A check of the figure by nut factor 0.20, never a figure to work to: the maker’s goes first.
      </Text>
    </Stack>
  );
}
