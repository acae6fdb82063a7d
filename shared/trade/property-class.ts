import { demandPositive } from './demand.ts';
import { convert } from './units.ts';

/**
 * Strength as marked on the head: property classes of ISO 898-1, and grades of SAE J429 for inch
 * threads (grade 2 no lines, grade 5 three, grade 8 six).
 */
export const PROPERTY_CLASSES = [
  ...(['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '9.8', '10.9', '12.9'] as const),
  ...(['grade 2', 'grade 5', 'grade 8'] as const),
] as const;

export type PropertyClass = (typeof PROPERTY_CLASSES)[number];

interface ProofStress {
  /** Largest diameter, mm, that it holds for. */
  readonly upTo: number;
  /** MPa */
  readonly stress: number;
}

/** Every class has a largest diameter: a bolt beyond it isn't of that class by the standard. */
const PROOF_STRESSES: Record<PropertyClass, readonly ProofStress[]> = {
  // ISO 898-1:2013 table 3, from memory; each agrees with the printed proof loads.
  '4.6': [{ upTo: 39, stress: 225 }],
  '4.8': [{ upTo: 39, stress: 310 }],
  '5.6': [{ upTo: 39, stress: 280 }],
  '5.8': [{ upTo: 39, stress: 380 }],
  '6.8': [{ upTo: 39, stress: 440 }],
  '8.8': [
    { upTo: 16, stress: 580 },
    { upTo: 39, stress: 600 },
  ],
  '9.8': [{ upTo: 16, stress: 650 }],
  '10.9': [{ upTo: 39, stress: 830 }],
  '12.9': [{ upTo: 39, stress: 970 }],
  // SAE J429, as a distributor's copy prints it.
  'grade 2': [
    { upTo: inches(0.75), stress: psi(55_000) },
    { upTo: inches(1.5), stress: psi(33_000) },
  ],
  'grade 5': [
    { upTo: inches(1), stress: psi(85_000) },
    { upTo: inches(1.5), stress: psi(74_000) },
  ],
  'grade 8': [{ upTo: inches(1.5), stress: psi(120_000) }],
};

/**
 * Proof stress, MPa (N/mm²), of a property class at a nominal diameter in mm.
 *
 * @throws {RangeError} when the class is unknown, or the diameter isn't positive or is larger than
 * the class is standardised for
 */
export function proofStress(propertyClass: PropertyClass, diameter: number): number {
  demandPositive(diameter, 'the diameter');
  if (!isPropertyClass(propertyClass)) {
    throw new RangeError(
      `'${propertyClass}' is not a property class that is known here: ${PROPERTY_CLASSES.join(', ')}.`,
    );
  }
  const found = PROOF_STRESSES[propertyClass].find(({ upTo }) => diameter <= upTo + 1e-6);
  if (found === undefined) {
    throw new RangeError(
      `Property class ${propertyClass} isn't standardised for a diameter of ${diameter} mm.`,
    );
  }
  return found.stress;
}

/** Whether a text is one of {@link PROPERTY_CLASSES}, letter for letter. */
export function isPropertyClass(text: string): text is PropertyClass {
  return Object.hasOwn(PROOF_STRESSES, text);
}

function psi(stress: number): number {
  return convert(stress, 'psi', 'kPa') / 1000;
}

function inches(diameter: number): number {
  return convert(diameter, 'in', 'mm');
}
