import { airPressure } from './atmosphere.ts';
import { demandBetween, demandFinite } from './demand.ts';

/**
 * Exponent of the compression p·Vⁿ while the starter turns the engine. Between 1 (all heat lost)
 * and 1.4 (none lost); 1.2 to 1.3 is common practice, no source. 1.2 is the careful end: with it a
 * ratio of 5.2 to 5.9 gives the 90 to 110 psi that TM 5-1185 §137 states for a gasoline engine.
 */
export const CRANKING_EXPONENT = 1.2;

export interface Cranking {
  readonly compressionRatio: number;
  /** metres, −1 000 to 11 000 */
  readonly altitude: number;
  /** 1 to 1.67; {@link CRANKING_EXPONENT} when left out */
  readonly exponent?: number | undefined;
}

/**
 * Cranking pressure to be expected, gauge kPa: p·rⁿ − p with the air pressure p of that altitude.
 * An expectation for comparing, not a limit: an automatic compression release, late valves, a weak
 * battery or a throttle left shut all lower it, and a low figure alone condemns nothing.
 *
 * @throws {RangeError} when the ratio isn't above 1 (to 30), or altitude or exponent is out of range
 */
export function crankingPressure({
  compressionRatio,
  altitude,
  exponent = CRANKING_EXPONENT,
}: Cranking): number {
  demandFinite(compressionRatio, 'the compression ratio');
  if (compressionRatio <= 1 || compressionRatio > 30) {
    throw new RangeError(
      `The compression ratio must be above 1 and at most 30; it is ${compressionRatio}.`,
    );
  }
  demandBetween(exponent, 1, 1.67, 'the exponent');
  const air = airPressure(altitude);
  return air * compressionRatio ** exponent - air;
}
