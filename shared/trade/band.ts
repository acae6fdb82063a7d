import { demandFinite } from './demand.ts';
import { fraction, over, plus, toNumber } from './exact.ts';

/** What a specification allows: a low limit, a high limit, or both. Limits belong to the band. */
export interface Band {
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

/** @throws {RangeError} when a limit isn't finite or low is above high. */
export function demandBand({ low, high }: Band): void {
  if (low !== undefined) {
    demandFinite(low, 'the low limit');
  }
  if (high !== undefined) {
    demandFinite(high, 'the high limit');
  }
  if (low !== undefined && high !== undefined && low > high) {
    throw new RangeError(`The low limit, ${low}, is above the high limit, ${high}.`);
  }
}

/**
 * The target of a band, in the band's unit: `aim` where the source states one, else the middle.
 *
 * @throws {RangeError} when low is above high, the aim lies outside the band, or a band with one
 * limit states no aim (it has no middle)
 */
export function aim(band: Band & { readonly aim?: number | undefined }): number {
  demandBand(band);
  const { low, high } = band;
  if (band.aim !== undefined) {
    demandFinite(band.aim, 'the aim');
    if ((low !== undefined && band.aim < low) || (high !== undefined && band.aim > high)) {
      throw new RangeError(`The aim, ${band.aim}, lies outside its own band.`);
    }
    return band.aim;
  }
  if (low === undefined || high === undefined) {
    throw new RangeError('A band with one limit has no middle: state an aim.');
  }
  return toNumber(over(plus(fraction(low), fraction(high)), fraction(2)));
}
