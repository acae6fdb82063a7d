import { normalBetween } from '../../../trade/index.ts';

/** Shapes that the true values of a feature are spread in: densities per base unit. */

export type Density = (value: number) => number;

/** Even from `low` to `high`, with shoulders of `soft`: what came out of tolerance by a little is as common. */
export const plateau =
  (low: number, high: number, soft: number): Density =>
  (value) =>
    normalBetween((value - high) / soft, (value - low) / soft) / (high - low);

/** Falls off from `edge` to one side (1 up, -1 down), `reach` on the mean; begins within the shoulder. */
export const tail =
  (edge: number, side: 1 | -1, reach: number): Density =>
  (value) => {
    const beyond = (value - edge) * side;
    return beyond < 0 ? 0 : Math.exp(-beyond / reach) / reach;
  };

/** As {@link tail}, by factors: `reach` is the mean of the logarithm. */
export const factorTail =
  (edge: number, side: 1 | -1, reach: number): Density =>
  (value) => {
    if (value <= 0) return 0;
    const beyond = Math.log(value / edge) * side;
    return beyond < 0 ? 0 : Math.exp(-beyond / reach) / reach / value;
  };

/** Falls off to both sides of the middle. */
export const peak =
  (middle: number, reach: number): Density =>
  (value) =>
    Math.exp(-Math.abs(value - middle) / reach) / (2 * reach);

/** Falls off to both sides of the middle by factors. */
export const factorPeak =
  (middle: number, reach: number): Density =>
  (value) =>
    value <= 0 ? 0 : Math.exp(-Math.abs(Math.log(value / middle)) / reach) / (2 * reach) / value;

export const even =
  (low: number, high: number): Density =>
  (value) =>
    value < low || value > high ? 0 : 1 / (high - low);

/** Even by factors. */
export const evenByFactor =
  (low: number, high: number): Density =>
  (value) =>
    value < low || value > high ? 0 : 1 / Math.log(high / low) / value;

/** The sum of densities, each with its share. */
export const mixed =
  (parts: readonly (readonly [share: number, density: Density])[]): Density =>
  (value) =>
    parts.reduce((sum, [share, density]) => sum + share * density(value), 0);

/** From nothing up to `edge`, rising with the given power: nearly closed is rarer than a little too tight. */
export const risingTo =
  (edge: number, power: number): Density =>
  (value) =>
    value < 0 || value > edge ? 0 : ((power + 1) * (value / edge) ** power) / edge;
