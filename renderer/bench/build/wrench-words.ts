import type { TorqueWalk } from '../../../shared/contract/bench/index.ts';
import { unitLabel } from '../../../shared/trade/index.ts';
import { type WrenchMark, wrenchMark } from '../../../shared/work/bench/wrench-mark.ts';
import type { WrenchInUse } from './use-wrench.ts';

/** The mark for a stage with the wrench in hand; null while the lever is not known. */
export function markFor(
  walk: Pick<TorqueWalk, 'unit'>,
  target: number,
  { gauge, extension, angle, length }: WrenchInUse,
): WrenchMark | null {
  try {
    return wrenchMark({
      target,
      unit: walk.unit,
      wrench: gauge,
      extension,
      angle,
      wrenchLength: length,
    });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

export const settingWords = ({ setting, unit }: WrenchMark): string =>
  `${setting} ${unitLabel(unit)}`;
