import { demandBand } from './band.ts';
import { demandNotNegative, demandPositive } from './demand.ts';
import { type Judgement, judge } from './judge.ts';

/**
 * A torque that a wrench is set to, and not read: the wrench lets go somewhere about its setting, as near to
 * it as its certificate says. One unit throughout.
 */

/** As the certificate has it: a share of the setting (0.04 is 4 %), or an amount in the unit of the torque. */
export type WrenchError =
  | { readonly kind: 'share'; readonly share: number }
  | { readonly kind: 'amount'; readonly amount: number };

interface Limits {
  readonly low: number | null;
  readonly high: number | null;
}

/**
 * What the bolt gets at least and at most. ISO 6789 states a tool's relative deviation of the torque that it
 * is set to from the true one, as a share of the true one: a = (set − true)/true. So 13 N·m on a wrench of
 * 4 % is 12.5 to 13.54 N·m. Source: ISO 6789-1:2017 (definition and classes from memory): ±6 % up to 10 N·m
 * and ±4 % above, for the usual settable wrench.
 *
 * @throws {RangeError} when the setting is negative, or the error is negative or as much as the torque
 */
export function torqueGiven(setting: number, error: WrenchError): { least: number; most: number } {
  demandNotNegative(setting, 'the setting');
  demandError(error);
  return error.kind === 'share'
    ? { least: setting / (1 + error.share), most: setting / (1 - error.share) }
    : { least: Math.max(0, setting - error.amount), most: setting + error.amount };
}

/**
 * The settings at which the bolt surely gets a torque within the limits; null when no setting does, or there
 * are no limits. A side without a limit is null.
 *
 * @throws {RangeError} when low is above high, or as {@link torqueGiven} does
 */
export function settingsWithin({ low, high }: Limits, error: WrenchError): Limits | null {
  demandError(error);
  demandBand({ low: low ?? undefined, high: high ?? undefined });
  if (low === null && high === null) return null;
  const up = (limit: number) =>
    error.kind === 'share' ? limit * (1 + error.share) : limit + error.amount;
  const down = (limit: number) =>
    error.kind === 'share' ? limit * (1 - error.share) : limit - error.amount;
  const left = { low: low === null ? null : up(low), high: high === null ? null : down(high) };
  return left.low !== null && left.high !== null && left.low > left.high ? null : left;
}

/** Settings and limits that ought to be equal differ by less than this share. */
const DUST = 1e-9;

/**
 * The verdict on a torque that was set: outside when the setting itself is, within when the limits hold all
 * that the wrench may give, too close otherwise. A single figure (low = high) leaves no room for any wrench:
 * it is within when the setting is as near to it as the wrench can tell. `conformance` as {@link judge}
 * has it, the error being the half-width of a rectangular distribution.
 *
 * @throws {RangeError} when there is no limit, or as {@link settingsWithin} does
 */
export function judgeSetTorque({
  setting,
  low,
  high,
  error,
}: Limits & { readonly setting: number; readonly error: WrenchError }): Judgement {
  const { least, most } = torqueGiven(setting, error);
  const limits = { low: low ?? undefined, high: high ?? undefined };
  const { conformance } = judge({
    value: setting,
    uncertainty: (most - least) / Math.sqrt(3),
    ...limits,
  });
  const dust = DUST * setting;
  if (low !== null && low === high)
    return {
      verdict: low >= least - dust && low <= most + dust ? 'within' : 'outside',
      conformance,
    };
  const holds = (torque: number) =>
    (low === null || torque >= low - dust) && (high === null || torque <= high + dust);
  const verdict = !holds(setting)
    ? 'outside'
    : holds(least) && holds(most)
      ? 'within'
      : 'too-close';
  return { verdict, conformance };
}

function demandError(error: WrenchError): void {
  const stated = error.kind === 'amount' ? error.amount : error.share;
  demandNotNegative(stated, 'the error of the wrench');
  if (error.kind === 'share')
    demandPositive(1 - error.share, 'what the error leaves of the torque');
}
