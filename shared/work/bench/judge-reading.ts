import { judgeSetTorque, settingsWithin, toBase, type Unit, unitLabel } from '../../trade/index.ts';
import type { Feature } from '../features.ts';
import type { GaugeInHand } from './gauge-remark.ts';
import { wrenchErrorOf } from './reading-uncertainty.ts';
import { type PlaceBand, type ReadingVerdict, verdictOn } from './reading-verdict.ts';
import { isTorque } from './torque-check.ts';

export interface JudgedReading {
  feature: Feature;
  /** Of a torque stage, its share of the final figure; 1 of all else. */
  share: number;
  /** Base unit, as are the limits and the uncertainty. */
  value: number;
  band: PlaceBand;
  /** Expanded, k = 2. */
  uncertainty: number;
  gauge: GaugeInHand | null;
}

export interface JudgedVerdict {
  verdict: ReadingVerdict;
  conformance: number | null;
}

/**
 * The verdict on a reading. What is read is held against its band by the gauge's uncertainty; a torque is
 * set, and is held against it by what the wrench may give at that setting. A stage before the last is a
 * step on the way: the bolt doesn't keep it, so its setting alone counts.
 */
export function judgeReading(judged: JudgedReading): JudgedVerdict {
  const { feature, share, value, band, uncertainty, gauge } = judged;
  const { low, high } = band;
  if (!isTorque(feature) || (low === null && high === null))
    return verdictOn(value, band, uncertainty);
  if (share < 1) return verdictOn(value, band, 0);
  return judgeSetTorque({ setting: value, low, high, error: wrenchErrorOf(gauge) });
}

/** The settings that a wrench leaves of a band, N·m; null where it leaves none or there is no band. */
export const settingsLeft = ({ low, high }: PlaceBand, gauge: GaugeInHand | null) =>
  settingsWithin({ low, high }, wrenchErrorOf(gauge));

/**
 * What part of a torque's band a wrench leaves, in a sentence without a full stop: `of 12–14 N·m this wrench
 * leaves 12.48–13.44`; empty without two limits, or where the band is a single figure.
 */
export function settingsLeftWords(band: PlaceBand, gauge: GaugeInHand | null, unit: Unit): string {
  const { low, high } = band;
  if (low === null || high === null || low === high) return '';
  const figure = (base: number, round: (value: number) => number) => {
    const size = base / toBase(1, unit);
    // Rounded into the band, so that what is said is surely within.
    const step = 10 ** (Math.floor(Math.log10(size)) - 2);
    return String(
      Number((round(size / step - 1e-9 * (round === Math.ceil ? 1 : -1)) * step).toPrecision(4)),
    );
  };
  const whole = `${figure(low, Math.round)}–${figure(high, Math.round)} ${unitLabel(unit)}`;
  const wrench = gauge === null ? 'a wrench of ±6 % (none was named)' : 'this wrench';
  const left = settingsLeft(band, gauge);
  return left?.low == null || left.high === null
    ? `${wrench} leaves nothing of ${whole}`
    : `of ${whole} ${wrench} leaves ${figure(left.low, Math.ceil)}–${figure(left.high, Math.floor)}`;
}
