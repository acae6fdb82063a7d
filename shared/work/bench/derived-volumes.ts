import { compressionRatio, type MeasuredSize, propagate, sweptVolume } from '../../trade/index.ts';

/** Displacement and compression ratio from what was measured. Stroke and piston are the book's. */

interface Sized extends MeasuredSize {
  cylinder: number;
}

/**
 * The mean size of a bore. Its readings come from one gauge, whose error is in all of them: the mean is
 * no better known than the least of them.
 */
function meanBore(bore: readonly MeasuredSize[]): MeasuredSize {
  const sum = bore.reduce((total, { value }) => total + value, 0);
  return {
    value: sum / bore.length,
    uncertainty: Math.max(...bore.map(({ uncertainty }) => uncertainty)),
  };
}

/** cm³ of all cylinders; null until each has a bore reading, or while the stroke isn't known. */
export function displacementOf(
  bore: readonly Sized[],
  { stroke, cylinders }: { stroke: number | null; cylinders: number },
): MeasuredSize | null {
  const byCylinder = [...Map.groupBy(bore, ({ cylinder }) => cylinder).values()].map(meanBore);
  if (stroke === null || byCylinder.length < cylinders) return null;
  const volumes = byCylinder.map((size) =>
    propagate([size], ([measured = 0]) => sweptVolume({ bore: measured, stroke })),
  );
  // The same gauge measured every bore: what it is wrong by, it is wrong by in all of them.
  return volumes.reduce((a, b) => ({
    value: a.value + b.value,
    uncertainty: a.uncertainty + b.uncertainty,
  }));
}

interface RatioParts {
  bore: readonly MeasuredSize[];
  chamber: readonly MeasuredSize[];
  gasket: readonly MeasuredSize[];
  deck: readonly MeasuredSize[];
  stroke: number | null;
}

/**
 * Geometric compression ratio of one cylinder with a flat piston, the gasket's hole taken to be the
 * bore. Null until bore, chamber, gasket and deck are all measured: a part left out would look like one
 * of no size.
 */
export function ratioOf({ bore, chamber, gasket, deck, stroke }: RatioParts): MeasuredSize | null {
  const [chamberNow, gasketNow, deckNow] = [chamber.at(-1), gasket.at(-1), deck.at(-1)];
  if (
    stroke === null ||
    bore.length === 0 ||
    chamberNow === undefined ||
    gasketNow === undefined ||
    deckNow === undefined
  )
    return null;
  try {
    return propagate(
      [meanBore(bore), chamberNow, gasketNow, deckNow],
      ([size = 0, volume = 0, thickness = 0, clearance = 0]) =>
        compressionRatio({
          bore: size,
          stroke,
          chamber: volume,
          gasketThickness: thickness,
          deckClearance: clearance,
        }),
    );
  } catch (error) {
    // Figures that leave no room above the piston are a slip; the readings themselves say so.
    if (error instanceof RangeError) return null;
    throw error;
  }
}
