import { display, displayNumber, type Unit } from '../../../trade/index.ts';
import { FEATURE_LABELS, type Feature } from '../../features.ts';
import { wearDirectionOf } from '../../wear-direction.ts';
import type { ReadingVerdict } from '../reading-verdict.ts';

/** A figure of a part as it came in, with what it was held against. Base units; `unit` is for showing. */
export interface PartFigure {
  feature: Feature;
  cylinder: number;
  /** Key of the place; empty for a figure that follows from others. */
  place: string;
  placeLabel: string;
  value: number;
  /** Expanded, k = 2. */
  uncertainty: number;
  verdict: ReadingVerdict;
  /** The limits of a part that has run: up to its wear limit where there is one. */
  low: number | null;
  high: number | null;
  unit: Unit;
}

/**
 * How a figure stands. `odd`: outside on the side where no wear leads, which a slip of the gauge or a part
 * of another size explains and wear does not.
 */
export type FigureStand = 'worn' | 'odd' | 'close' | 'sound' | 'unjudged';

export function standOf({ feature, verdict, value, low, high }: PartFigure): FigureStand {
  if (verdict === 'no-band') return 'unjudged';
  if (verdict === 'within') return 'sound';
  if (verdict === 'too-close') return 'close';
  const wears = wearDirectionOf(feature);
  if (wears === 'up' && low !== null && value < low) return 'odd';
  if (wears === 'down' && high !== null && value > high) return 'odd';
  return 'worn';
}

const limits = ({ low, high, unit }: PartFigure): string => {
  if (low !== null && high !== null) return `${displayNumber(low, unit)}–${display(high, unit)}`;
  if (high !== null) return `the limit of ${display(high, unit)}`;
  return low === null ? '' : `the least of ${display(low, unit)}`;
};

const STAND_WORDS: Record<FigureStand, (figure: PartFigure) => string> = {
  worn: (figure) => `is outside ${limits(figure)}`,
  odd: (figure) => `is outside ${limits(figure)} on the side where wear doesn’t lead`,
  close: (figure) => `is too close to call against ${limits(figure)}`,
  sound: (figure) => `is within ${limits(figure)}`,
  unjudged: () => 'has no limits in the spec book',
};

/** 'Cylinder bore 81.12 mm (top, across the crankshaft) is outside 81.00–81.10 mm.' */
export function figureSentence(figure: PartFigure): string {
  const place = figure.placeLabel === '' ? '' : ` (${figure.placeLabel})`;
  const value = display(figure.value, figure.unit);
  return `${FEATURE_LABELS[figure.feature]} ${value}${place} ${STAND_WORDS[standOf(figure)](figure)}.`;
}

/** 'Within their limits: cylinder bore 81.04 mm; bore taper 0.01 mm.' A single one is said in full. */
export function soundSentence(figures: readonly PartFigure[]): string {
  const [only] = figures;
  if (only !== undefined && figures.length === 1) return figureSentence(only);
  const each = figures.map(({ feature, value, unit, placeLabel }) => {
    const label = FEATURE_LABELS[feature];
    const place = placeLabel === '' ? '' : ` (${placeLabel})`;
    return `${label.charAt(0).toLowerCase()}${label.slice(1)} ${display(value, unit)}${place}`;
  });
  return `Within their limits: ${each.join('; ')}.`;
}

/** A figure as it is said of one cylinder, where everybody knows which. */
export const withoutCylinder = (figure: PartFigure): PartFigure => ({
  ...figure,
  placeLabel: figure.placeLabel.replace(/^cylinder \d+(?:, )?/, ''),
});

const ATTENTION: readonly FigureStand[] = ['worn', 'odd', 'close', 'unjudged', 'sound'];

/** The figures, one a feature: the one that asks for most attention, and of equals the most worn. */
export function tellingFigures(figures: readonly PartFigure[]): PartFigure[] {
  const groups = Map.groupBy(figures, ({ feature, cylinder }) => `${feature} ${cylinder}`);
  return [...groups.values()].map((group) =>
    group.reduce((a, b) => {
      const rank = ATTENTION.indexOf(standOf(b)) - ATTENTION.indexOf(standOf(a));
      const wearsMore =
        wearDirectionOf(b.feature) === 'down' ? b.value < a.value : b.value > a.value;
      return rank < 0 || (rank === 0 && wearsMore) ? b : a;
    }),
  );
}
