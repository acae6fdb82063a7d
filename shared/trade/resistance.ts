import { demandBetween, demandNotNegative, finite } from './demand.ts';

/** Temperature coefficient of annealed copper at 20 °C, 1/°C. Source: IEC 60028. */
export const COPPER_COEFFICIENT = 0.00393;

export interface WindingReading {
  /** Ω, or kΩ: the result is in the same. */
  readonly resistance: number;
  /** Of the winding itself, °C, −50 to 200. */
  readonly temperature: number;
}

/**
 * What a copper winding would read at 20 °C: R/(1 + 0.00393·(t − 20)). Source: IEC 60028.
 *
 * @throws {RangeError} when the resistance is negative or the temperature out of its range
 */
export function resistanceAt20({ resistance, temperature }: WindingReading): number {
  demandNotNegative(resistance, 'the resistance');
  demandBetween(temperature, -50, 200, 'the temperature of the winding in °C');
  return finite(resistance / (1 + COPPER_COEFFICIENT * (temperature - 20)));
}
