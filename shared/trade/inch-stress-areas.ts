/**
 * Tensile stress areas of coarse inch threads, in², as tables print them (read in a published copy;
 * formula ASME B1.1). SAE J429 proof loads are these rounded areas times the proof stress.
 */
const PRINTED_AREAS = [
  { inches: 1 / 4, threadsPerInch: 20, area: 0.0318 },
  { inches: 5 / 16, threadsPerInch: 18, area: 0.0524 },
  { inches: 3 / 8, threadsPerInch: 16, area: 0.0775 },
  { inches: 7 / 16, threadsPerInch: 14, area: 0.1063 },
  { inches: 1 / 2, threadsPerInch: 13, area: 0.1419 },
] as const satisfies readonly { inches: number; threadsPerInch: number; area: number }[];

const MM_PER_INCH = 25.4;
/** Sizes in mm come rounded to hundredths. */
const ROUNDING = 0.0051;

/** The printed area, mm², of an inch thread in mm, or `undefined` where none is kept. */
export function printedInchArea(diameter: number, pitch: number): number | undefined {
  const thread = PRINTED_AREAS.find(
    ({ inches, threadsPerInch }) =>
      Math.abs(inches * MM_PER_INCH - diameter) < ROUNDING &&
      Math.abs(MM_PER_INCH / threadsPerInch - pitch) < ROUNDING,
  );
  return thread === undefined ? undefined : thread.area * MM_PER_INCH ** 2;
}
