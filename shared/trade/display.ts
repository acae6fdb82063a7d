import { BASE_UNIT_OF, convert, dimensionOf, type Unit } from './units.ts';

/** Fewest and most decimals that a reading in each unit is shown with. */
const DECIMALS: Record<Unit, readonly [fewest: number, most: number]> = {
  mm: [2, 3],
  um: [0, 1],
  in: [3, 4],
  thou: [0, 1],
  N·m: [0, 1],
  lbf·ft: [0, 1],
  lbf·in: [0, 0],
  kgf·m: [1, 2],
  kgf·cm: [0, 0],
  kPa: [0, 0],
  psi: [0, 1],
  bar: [1, 2],
  inHg: [1, 2],
  '°C': [0, 1],
  '°F': [0, 1],
  K: [0, 1],
  cm3: [0, 1],
  in3: [1, 2],
  L: [1, 3],
  ml: [0, 1],
  'fl-oz-us': [1, 2],
  'gal-us': [1, 3],
  kW: [1, 2],
  hp: [1, 2],
  N: [0, 0],
  lbf: [0, 0],
  Ω: [1, 3],
  kΩ: [1, 3],
  '1/min': [0, 0],
  rpm: [0, 0],
  '%': [0, 1],
  V: [0, 2],
  A: [0, 2],
  '°': [0, 1],
  ':1': [1, 2],
};

const LABELS: Partial<Record<Unit, string>> = {
  um: 'µm',
  cm3: 'cm³',
  in3: 'in³',
  'fl-oz-us': 'US fl oz',
  'gal-us': 'US gal',
};

/** How a unit is written beside a number, on screen and on paper. */
export function unitLabel(unit: Unit): string {
  return LABELS[unit] ?? unit;
}

/**
 * A value in the base unit of its dimension, turned into `unit` and rounded to the decimals that
 * make sense there, without the unit: `displayNumber(0.1524, 'in')` is '0.006'.
 *
 * @throws {RangeError} when the value isn't finite or is a temperature below absolute zero
 */
export function displayNumber(value: number, unit: Unit): string {
  const [fewest, most] = DECIMALS[unit];
  const converted = convert(value, BASE_UNIT_OF[dimensionOf(unit)], unit);
  const text = new Intl.NumberFormat('en', {
    minimumFractionDigits: fewest,
    maximumFractionDigits: most,
    useGrouping: false,
    signDisplay: 'negative',
  }).format(converted);
  return text;
}

/**
 * As {@link displayNumber}, with the unit: `display(0.1524, 'in')` is '0.006 in',
 * `display(0.3, 'mm')` is '0.30 mm'.
 */
export function display(value: number, unit: Unit): string {
  const gap = unit === '°' ? '' : '\u00A0';
  return `${displayNumber(value, unit)}${gap}${unitLabel(unit)}`;
}
