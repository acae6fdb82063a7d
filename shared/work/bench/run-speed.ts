import { display, displayNumber } from '../../trade/index.ts';
import { RUN_FEATURES, type RunFeature } from '../features.ts';
import { type GaugeInHand, gaugeRemark, uncertaintyInBase } from './gauge-remark.ts';
import { type PlaceBand, type ReadingVerdict, verdictOn } from './reading-verdict.ts';
import type { TestRunFindings } from './test-run.ts';

/** An engine's speeds in a test run, held against the spec book. All speeds in 1/min. */

/** A speed as it was judged when the run was signed: the book may move on, this doesn't. */
export interface SpeedFound extends PlaceBand {
  feature: RunFeature;
  value: number;
  /** The revision that it was held against; null when the book has no figure. */
  specificationId: string | null;
  verdict: ReadingVerdict;
  /** Probability of conformity, 0 to 1; null without a band. */
  conformance: number | null;
  /** Expanded (k = 2); 0 when no tachometer was named. */
  uncertainty: number;
  /** The tachometer; empty when none was named. */
  gauge: string;
  gaugeRemark: string;
}

export interface SpeedBand extends PlaceBand {
  feature: RunFeature;
  specificationId: string;
}

/** What the book says of a speed, as it is judged by. */
export const speedBand = (specification: {
  feature: RunFeature;
  id: string;
  lowBase: number | null;
  highBase: number | null;
}): SpeedBand => ({
  feature: specification.feature,
  specificationId: specification.id,
  low: specification.lowBase,
  high: specification.highBase,
});

const MEASURED_AS = {
  'idle-speed': 'idleSpeed',
  'top-speed': 'topSpeed',
} as const satisfies Record<RunFeature, keyof TestRunFindings>;

/** The speeds that the spec book knows and a run has not; all of them when there was no run. */
export const speedsNotMeasured = (
  known: readonly string[],
  findings: Pick<TestRunFindings, 'idleSpeed' | 'topSpeed'> | null,
): RunFeature[] =>
  RUN_FEATURES.filter(
    (feature) => known.includes(feature) && (findings?.[MEASURED_AS[feature]] ?? null) === null,
  );

/** The speeds that were measured, each with its verdict by the band and the tachometer's uncertainty. */
export const judgeSpeeds = (
  findings: Pick<TestRunFindings, 'idleSpeed' | 'topSpeed'>,
  bands: readonly SpeedBand[],
  tachometer: GaugeInHand | null,
): SpeedFound[] =>
  RUN_FEATURES.flatMap((feature): SpeedFound[] => {
    const value = findings[MEASURED_AS[feature]];
    if (value === null) return [];
    const band = bands.find((each) => each.feature === feature);
    const { low, high } = band ?? { low: null, high: null };
    const uncertainty = uncertaintyInBase(tachometer);
    return [
      {
        feature,
        value,
        low,
        high,
        specificationId: band?.specificationId ?? null,
        ...verdictOn(value, { low, high }, uncertainty),
        uncertainty,
        gauge: tachometer?.name ?? '',
        gaugeRemark: gaugeRemark(tachometer, value, '1/min'),
      },
    ];
  });

/** Limits of a speed in words. */
export function speedBandWords({ low, high }: PlaceBand): string {
  if (low !== null && high !== null)
    return `${displayNumber(low, 'rpm')} to ${display(high, 'rpm')}`;
  if (low !== null) return `at least ${display(low, 'rpm')}`;
  return high === null ? 'no limits' : `at most ${display(high, 'rpm')}`;
}

const VERDICT_WORDS: Record<ReadingVerdict, string> = {
  within: 'within',
  outside: 'outside',
  'too-close': 'too close to call:',
  'no-band': '',
};

/** A speed in words: the figure, what it was held against, and what it was measured with. */
export function speedWords(found: SpeedFound): string {
  const judged = found.verdict !== 'no-band';
  const gauge =
    found.gauge === '' ? '' : `${found.gauge}, ±${displayNumber(found.uncertainty, 'rpm')}`;
  // Without a figure to hold it against a speed needs no gauge to stand on.
  const remark = judged || found.gauge !== '' ? found.gaugeRemark : '';
  const measured = [gauge, remark].filter(Boolean).join('; ');
  return [
    display(found.value, 'rpm'),
    judged ? `, ${VERDICT_WORDS[found.verdict]} ${speedBandWords(found)}` : '',
    measured === '' ? '' : ` (${measured})`,
  ].join('');
}
