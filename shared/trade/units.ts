import { demandFinite } from './demand.ts';
import { type Fraction, fraction, minus, over, plus, times, toNumber } from './exact.ts';

/**
 * Units that a reading may be typed in. The first of each dimension is the base unit that readings
 * are compared and computed in. `fl-oz-us` and `gal-us` are the US fluid ounce and gallon; `inHg` is
 * the conventional inch of mercury (13 595.1 kg/m³); `hp` is 550 ft·lbf/s; `°` is an angle;
 * `:1` is a ratio, such as that of compression; `rpm` is what `1/min` is often printed as.
 */
export const UNITS = [
  ...(['mm', 'um', 'in', 'thou'] as const),
  ...(['N·m', 'lbf·ft', 'lbf·in', 'kgf·m', 'kgf·cm'] as const),
  ...(['kPa', 'psi', 'bar', 'inHg'] as const),
  ...(['°C', '°F', 'K'] as const),
  ...(['cm3', 'in3', 'L', 'ml', 'fl-oz-us', 'gal-us'] as const),
  ...(['kW', 'hp'] as const),
  ...(['N', 'lbf'] as const),
  ...(['Ω', 'kΩ'] as const),
  ...(['1/min', 'rpm', '%', 'V', 'A', '°', ':1'] as const),
] as const;

export type Unit = (typeof UNITS)[number];

/** The base unit of each dimension. */
export const BASE_UNIT_OF = {
  length: 'mm',
  torque: 'N·m',
  pressure: 'kPa',
  temperature: '°C',
  volume: 'cm3',
  power: 'kW',
  force: 'N',
  resistance: 'Ω',
  'rotational speed': '1/min',
  share: '%',
  voltage: 'V',
  current: 'A',
  angle: '°',
  ratio: ':1',
} as const satisfies Record<string, Unit>;

export type Dimension = keyof typeof BASE_UNIT_OF;

interface Definition {
  readonly dimension: Dimension;
  /** How many base units one of this unit is. */
  readonly factor: Fraction;
  /** Where this unit's zero lies, in base units. */
  readonly zero: Fraction;
}

const NONE = fraction(0);
const ONE = fraction(1);
const INCH_IN_METRES = fraction('0.0254');
const FOOT_IN_METRES = fraction('0.3048');
const STANDARD_GRAVITY = fraction('9.80665');
const POUND_FORCE = times(fraction('0.45359237'), STANDARD_GRAVITY);
const CUBIC_INCH_IN_CM3 = fraction('16.387064');
const THOUSAND = fraction(1000);
const INCH_OF_MERCURY_IN_PASCALS = times(
  times(fraction('13595.1'), STANDARD_GRAVITY),
  INCH_IN_METRES,
);

/**
 * Every factor is built from the exact definitions: inch 25.4 mm, pound 0.45359237 kg, standard
 * gravity 9.80665 m/s², US gallon 231 in³ (NIST SP 811, 2008, appendix B).
 */
const DEFINITIONS: Record<Unit, Definition> = {
  mm: unit('length', ONE),
  um: unit('length', fraction('0.001')),
  in: unit('length', fraction('25.4')),
  thou: unit('length', fraction('0.0254')),
  N·m: unit('torque', ONE),
  lbf·ft: unit('torque', times(POUND_FORCE, FOOT_IN_METRES)),
  lbf·in: unit('torque', times(POUND_FORCE, INCH_IN_METRES)),
  kgf·m: unit('torque', STANDARD_GRAVITY),
  kgf·cm: unit('torque', over(STANDARD_GRAVITY, fraction(100))),
  kPa: unit('pressure', ONE),
  psi: unit('pressure', over(over(POUND_FORCE, times(INCH_IN_METRES, INCH_IN_METRES)), THOUSAND)),
  bar: unit('pressure', fraction(100)),
  inHg: unit('pressure', over(INCH_OF_MERCURY_IN_PASCALS, THOUSAND)),
  '°C': unit('temperature', ONE),
  '°F': unit('temperature', over(fraction(5), fraction(9)), over(fraction(-160), fraction(9))),
  K: unit('temperature', ONE, fraction('-273.15')),
  cm3: unit('volume', ONE),
  in3: unit('volume', CUBIC_INCH_IN_CM3),
  L: unit('volume', THOUSAND),
  ml: unit('volume', ONE),
  'fl-oz-us': unit('volume', over(times(fraction(231), CUBIC_INCH_IN_CM3), fraction(128))),
  'gal-us': unit('volume', times(fraction(231), CUBIC_INCH_IN_CM3)),
  kW: unit('power', ONE),
  hp: unit('power', over(times(fraction(550), times(POUND_FORCE, FOOT_IN_METRES)), THOUSAND)),
  N: unit('force', ONE),
  lbf: unit('force', POUND_FORCE),
  Ω: unit('resistance', ONE),
  kΩ: unit('resistance', THOUSAND),
  '1/min': unit('rotational speed', ONE),
  rpm: unit('rotational speed', ONE),
  '%': unit('share', ONE),
  V: unit('voltage', ONE),
  A: unit('current', ONE),
  '°': unit('angle', ONE),
  ':1': unit('ratio', ONE),
};

function unit(dimension: Dimension, factor: Fraction, zero = NONE): Definition {
  return { dimension, factor, zero };
}

/** Whether a text is one of {@link UNITS}, letter for letter. */
export function isUnit(text: string): text is Unit {
  return Object.hasOwn(DEFINITIONS, text);
}

/** What a unit measures. @throws {RangeError} for a unit that isn't one of {@link UNITS}. */
export function dimensionOf(unit: Unit): Dimension {
  return definitionOf(unit).dimension;
}

/** The units of one dimension, base unit first. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return UNITS.filter((unit) => DEFINITIONS[unit].dimension === dimension);
}

/**
 * A value in another unit of the same dimension: the double nearest to the exact result, taking
 * `value` for the decimal that it prints as. Temperatures are points on a scale; for a difference
 * of temperatures no 32 is taken off, so don't use this for one.
 *
 * @throws {RangeError} when the dimensions differ, the value isn't finite, a unit is unknown, or a
 * temperature lies below absolute zero.
 */
export function convert(value: number, from: Unit, to: Unit): number {
  const source = definitionOf(from);
  const target = definitionOf(to);
  if (source.dimension !== target.dimension) {
    throw new RangeError(
      `One can't be turned into the other: ${from} measures ${source.dimension}, ${to} measures ${target.dimension}.`,
    );
  }
  demandFinite(value, 'the value');
  demandAboveAbsoluteZero(value, from);
  if (from === to) {
    return value;
  }
  const base = plus(times(fraction(value), source.factor), source.zero);
  return toNumber(over(minus(base, target.zero), target.factor));
}

/** A value in the base unit of its dimension. @throws {RangeError} as {@link convert} does. */
export function toBase(value: number, from: Unit): number {
  return convert(value, from, BASE_UNIT_OF[dimensionOf(from)]);
}

const ABSOLUTE_ZERO: Partial<Record<Unit, number>> = { '°C': -273.15, '°F': -459.67, K: 0 };

/** @throws {RangeError} for a temperature below absolute zero. */
export function demandAboveAbsoluteZero(value: number, unit: Unit): void {
  const lowest = ABSOLUTE_ZERO[unit];
  if (lowest !== undefined && value < lowest) {
    throw new RangeError(`Nothing is colder than ${lowest} ${unit}; ${value} ${unit} can't be.`);
  }
}

function definitionOf(unit: Unit): Definition {
  if (!isUnit(unit)) {
    throw new RangeError(`'${unit}' is not a unit that is known here.`);
  }
  return DEFINITIONS[unit];
}
