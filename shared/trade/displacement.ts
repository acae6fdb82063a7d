import { demandFinite, demandNotNegative, demandPositive, demandWhole, finite } from './demand.ts';

const MM3_IN_CM3 = 1000;

export interface Cylinders {
  /** mm */
  readonly bore: number;
  /** mm */
  readonly stroke: number;
  /** How many; one when left out. */
  readonly cylinders?: number | undefined;
}

/**
 * Swept volume (displacement), cm³: π/4 · bore² · stroke · cylinders.
 *
 * @throws {RangeError} when bore or stroke isn't positive or the cylinders aren't 1 to 64
 */
export function sweptVolume({ bore, stroke, cylinders = 1 }: Cylinders): number {
  demandPositive(bore, 'the bore');
  demandPositive(stroke, 'the stroke');
  demandWhole(cylinders, 1, 64, 'the number of cylinders');
  return finite(discVolume(bore, stroke) * cylinders);
}

export interface CombustionSpace {
  /** mm */
  readonly bore: number;
  /** mm */
  readonly stroke: number;
  /** Volume of the chamber in the head, cm³. */
  readonly chamber: number;
  /** Hole of the head gasket, mm; the bore when left out. */
  readonly gasketBore?: number | undefined;
  /** Compressed, mm; zero when left out. */
  readonly gasketThickness?: number | undefined;
  /** From the piston's edge up to the deck at top dead centre, mm; negative when it stands proud. */
  readonly deckClearance?: number | undefined;
  /** What the crown takes of the chamber, cm³; negative for a dish. */
  readonly pistonDome?: number | undefined;
}

/**
 * Geometric compression ratio of one cylinder: (swept + clearance volume)/clearance volume. The
 * valves close late, so the ratio that the gas feels is lower.
 *
 * @throws {RangeError} when a size or volume is out of sense, the gasket's hole is smaller than the
 * bore, or nothing is left above the piston
 */
export function compressionRatio({
  bore,
  stroke,
  chamber,
  gasketBore = bore,
  gasketThickness = 0,
  deckClearance = 0,
  pistonDome = 0,
}: CombustionSpace): number {
  const swept = sweptVolume({ bore, stroke });
  demandNotNegative(chamber, 'the chamber volume');
  demandPositive(gasketBore, 'the bore of the gasket');
  demandNotNegative(gasketThickness, 'the thickness of the gasket');
  demandFinite(deckClearance, 'the deck clearance');
  demandFinite(pistonDome, 'the volume of the piston dome');
  if (gasketBore < bore) {
    throw new RangeError(
      `The bore of the gasket, ${gasketBore} mm, can't be smaller than the bore, ${bore} mm.`,
    );
  }
  const left =
    chamber +
    discVolume(gasketBore, gasketThickness) +
    discVolume(bore, deckClearance) -
    pistonDome;
  if (left <= 0) {
    throw new RangeError(
      `With these figures ${left.toFixed(2)} cm³ is left above the piston: check chamber, gasket, deck and dome.`,
    );
  }
  return finite((swept + left) / left);
}

/** cm³ of a disc, both sizes in mm. */
function discVolume(diameter: number, height: number): number {
  return ((Math.PI / 4) * diameter ** 2 * height) / MM3_IN_CM3;
}
