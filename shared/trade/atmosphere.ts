import { demandBetween } from './demand.ts';

const SEA_LEVEL_PRESSURE = 101.325;
const SEA_LEVEL_TEMPERATURE = 288.15;
/** K per metre */
const LAPSE_RATE = 0.0065;
const STANDARD_GRAVITY = 9.80665;
/** J/(kg·K), dry air: 8 314.32/28.9644 */
const GAS_CONSTANT = 8314.32 / 28.9644;
const EXPONENT = STANDARD_GRAVITY / (GAS_CONSTANT * LAPSE_RATE);

/** Below the lowest dry land there is; the formula itself goes on to −5 000 m (from memory). */
const LOWEST = -1000;
const HIGHEST = 11_000;

/**
 * Air pressure, kPa absolute, at an altitude in metres (geopotential: at 2 500 m the tape says 1 m
 * more), −1 000 to 11 000. Standard atmosphere: the weather moves it by a few per cent.
 * Source: ISO 2533:1975, equal to US Standard Atmosphere 1976 in this layer.
 *
 * @throws {RangeError} when the altitude is out of its range
 */
export function airPressure(altitude: number): number {
  demandBetween(altitude, LOWEST, HIGHEST, 'the altitude in metres');
  return SEA_LEVEL_PRESSURE * (1 - (LAPSE_RATE * altitude) / SEA_LEVEL_TEMPERATURE) ** EXPONENT;
}
