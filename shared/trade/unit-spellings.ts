import { type Dimension, dimensionOf, isUnit, type Unit } from './units.ts';

/** How people write each unit, after {@link fold}: no case, spaces, hyphens, dots or carets. */
const SPELLINGS: Record<Unit, string> = {
  mm: 'mm millimetre millimetres millimeter millimeters',
  um: 'um μ micron microns micrometre micrometres micrometer micrometers',
  in: "in ins inch inches \" ''",
  thou: 'thou thous thousandth thousandths',
  N·m: 'nm newtonmetre newtonmetres newtonmeter newtonmeters',
  lbf·ft: poundsAt(['ft', 'foot', 'feet']),
  lbf·in: poundsAt(['in', 'inch', 'inches']),
  kgf·m: 'kgfm kgm mkg mkgf',
  kgf·cm: 'kgfcm kgcm cmkg cmkgf',
  kPa: 'kpa kilopascal kilopascals',
  psi: 'psi psig lb/in2 lbf/in2',
  bar: 'bar bars',
  inHg: 'inhg "hg inchhg incheshg inchofmercury inchesofmercury',
  '°C': '°c c degc celsius',
  '°F': '°f f degf fahrenheit',
  K: 'k kelvin kelvins',
  cm3: 'cm3 cc ccm cucm cubiccentimetre cubiccentimetres cubiccentimeter cubiccentimeters',
  in3: 'in3 cuin cubicinch cubicinches',
  L: 'l litre litres liter liters',
  ml: 'ml millilitre millilitres milliliter milliliters',
  'fl-oz-us': 'flozus usfloz floz oz fluidounce fluidounces',
  'gal-us': 'galus usgal gal gals gallon gallons',
  kW: 'kw kilowatt kilowatts',
  hp: 'hp bhp horsepower',
  N: 'n newton newtons',
  lbf: 'lbf lb lbs pound pounds',
  Ω: 'ω ohm ohms',
  kΩ: 'kω kohm kohms kilohm kilohms k',
  '1/min': '1/min min1 min⁻¹',
  rpm: 'rpm r/min rev/min revs/min',
  '%': '% percent pct',
  V: 'v volt volts',
  A: 'a amp amps ampere amperes',
  '°': '° deg degs degree degrees',
  ':1': ':1 to1',
};

const UNITS_SPELT = spellings();

/**
 * The unit that a person meant by a text beside a number. Where one spelling serves two units
 * ('k' is kelvin and kilohm) the dimension of the expected unit settles it; a bare degree sign in a
 * temperature means the expected scale.
 *
 * @throws {RangeError} when no unit is spelt so, or the spelling is known to mean two things.
 */
export function unitSpelt(text: string, expected: Unit): Unit {
  const wanted: Dimension = dimensionOf(expected);
  const folded = fold(text);
  if (/^mils?$/.test(folded)) {
    throw new RangeError(
      `'${text}' is a thousandth of an inch to some and a millimetre to others: write thou or mm.`,
    );
  }
  const meant = UNITS_SPELT.get(folded) ?? [];
  if (wanted === 'temperature' && meant.includes('°')) {
    return expected;
  }
  const unit = meant.find((each) => dimensionOf(each) === wanted) ?? meant[0];
  if (unit === undefined) {
    throw new RangeError(
      `'${text}' is not a unit that is known here: write the number alone, or with ${expected}.`,
    );
  }
  return unit;
}

function fold(text: string): string {
  return text.toLowerCase().replace(/[\s.^*·_-]+/g, '');
}

/** 'ft lbs', 'lb-ft', 'foot pounds', 'in/lb': pound and arm in either order, abbreviated or not. */
function poundsAt(arms: readonly string[]): string {
  const pounds = ['lb', 'lbs', 'lbf', 'pound', 'pounds', 'poundforce', 'poundsforce'];
  return arms
    .flatMap((arm) => pounds.flatMap((pound) => [pound + arm, arm + pound, `${arm}/${pound}`]))
    .join(' ');
}

function spellings(): ReadonlyMap<string, readonly Unit[]> {
  const units = new Map<string, Unit[]>();
  for (const [unit, texts] of Object.entries(SPELLINGS)) {
    for (const text of texts.split(' ')) {
      if (isUnit(unit)) {
        units.set(text, [...(units.get(text) ?? []), unit]);
      }
    }
  }
  return units;
}
