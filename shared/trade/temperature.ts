import { demandBetween, demandPositive } from './demand.ts';
import { demandAboveAbsoluteZero } from './units.ts';

/** Temperature at which sizes are stated, °C. Source: ISO 1:2016. */
export const REFERENCE_TEMPERATURE = 20;

/**
 * Coefficients of linear expansion, 1/°C, with the source that each must be shown with: books
 * differ by several per cent for one material.
 */
export const EXPANSION_COEFFICIENTS = [
  { material: 'steel', alpha: 11.5e-6, source: 'Swyt, J. Res. NIST 99, 31 (1994)' },
  { material: 'aluminium', alpha: 23.1e-6, source: 'Swyt, J. Res. NIST 99, 31 (1994)' },
  { material: 'grey cast iron', alpha: 10.8e-6, source: 'trade table; another prints 11.4e-6' },
] as const satisfies readonly { material: string; alpha: number; source: string }[];

/**
 * What a length measured at `temperature` (°C) would measure at 20 °C: length/(1 + α·(t − 20)), in
 * the unit of the length. For a gauge that is itself true at that temperature; when gauge and part
 * share a temperature, use the part's coefficient less the gauge's, which is below zero for a steel
 * gauge in cast iron.
 *
 * @param alpha coefficient of linear expansion, 1/°C, −0.001 to 0.001 (steel 11.5e-6, not 11.5)
 * @throws {RangeError} when the length isn't positive, the temperature is below absolute zero or
 * above 1000 °C, or alpha is out of its range
 */
export function toReference(length: number, temperature: number, alpha: number): number {
  demandPositive(length, 'the length');
  demandAboveAbsoluteZero(temperature, '°C');
  demandBetween(temperature, -273.15, 1000, 'the temperature in °C');
  demandBetween(alpha, -1e-3, 1e-3, 'the coefficient of expansion per °C');
  return length / (1 + alpha * (temperature - REFERENCE_TEMPERATURE));
}
