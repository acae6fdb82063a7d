import type { DerivedOnSheet } from '../../shared/contract/bench/index.ts';
import { unitLabel } from '../../shared/trade/index.ts';
import { withoutWear } from '../../shared/work/bench/deciding/renewed-parts.ts';
import { endsOf } from '../../shared/work/bench/derived-verdict.ts';
import {
  acceptedBand,
  isWornButGood,
  limitsAt,
  WORN_BUT_GOOD,
} from '../../shared/work/bench/reading-verdict.ts';
import { wearLimitWords } from '../../shared/work/specbook/wear-limit.ts';
import { printedLimits } from '../common/measure/measure-words.ts';

type Figure = Pick<
  DerivedOnSheet,
  'value' | 'largest' | 'phase' | 'verdict' | 'specification' | 'renewed'
>;

/** What a figure was held against, the wear limit too where that is what decided. */
export function heldAgainst(figure: Figure): string {
  const { phase, verdict, specification, renewed } = figure;
  if (specification === null) return 'no specification';
  const limits = withoutWear(limitsAt(specification, 1), renewed, phase);
  const { low, high } = acceptedBand(specification.feature, limits, phase);
  const byWear = limits.wearLimit !== null && [low, high].includes(limits.wearLimit);
  return [
    printedLimits(specification),
    byWear ? `wear limit ${wearLimitWords(specification)} ${unitLabel(specification.unit)}` : '',
    verdict === 'within' &&
    endsOf(figure).some((end) => isWornButGood(specification.feature, end, limits, phase))
      ? WORN_BUT_GOOD
      : '',
  ]
    .filter(Boolean)
    .join('; ');
}
