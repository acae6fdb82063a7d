import type { Feature } from '../../features.ts';
import type { Phase } from '../../vocabulary.ts';
import type { DecisionChoice, DecisionSubject } from './decisions.ts';

/**
 * Which decisions make a part new again: machined to size, or replaced. What is new is held to the limits of
 * a new part, whenever it is measured after that; a wear limit is for parts that have run.
 */

export interface PartDecision {
  subject: DecisionSubject;
  /** From 1; 0 for what an engine has once. */
  cylinder: number;
  choice: DecisionChoice;
}

interface Renewal {
  subject: DecisionSubject;
  choices: readonly DecisionChoice[];
}

const bored: Renewal = { subject: 'cylinder', choices: ['next-oversize', 'replace'] };
const newPiston: Renewal = { subject: 'piston', choices: ['next-oversize', 'replace'] };
const newRings: Renewal = { subject: 'rings', choices: ['next-oversize', 'replace'] };
const ground: Renewal = { subject: 'crankshaft', choices: ['undersize', 'replace'] };
const newCrankshaft: Renewal = { subject: 'crankshaft', choices: ['replace'] };
const newRod: Renewal = { subject: 'connecting-rod', choices: ['undersize', 'replace'] };
const newValves: Renewal = { subject: 'valves', choices: ['replace'] };
const newSprings: Renewal = { subject: 'valve-springs', choices: ['replace'] };
const newGuides: Renewal = { subject: 'valve-guides', choices: ['replace'] };
const seatsCut: Renewal = { subject: 'valve-seats', choices: ['cut', 'replace'] };
/** Of jobs on which seats were decided on with their valves. */
const valvesAndSeats: Renewal = { subject: 'valves', choices: ['resurface'] };
const filedRings: Renewal = { subject: 'rings', choices: ['file'] };
const headMachined: Renewal = { subject: 'head', choices: ['resurface', 'replace'] };
const newCoil: Renewal = { subject: 'coil', choices: ['replace'] };

/**
 * What has to be decided for a feature to be that of a new part: any of a list for one part, and each of
 * them for a fit of two. A fit with one part that has run is a fit of run parts. A hone that only breaks the
 * glaze leaves the bore as worn as it was.
 */
const RENEWED_BY: Partial<Record<Feature, readonly (readonly Renewal[])[]>> = {
  bore: [[bored]],
  'bore-taper': [[bored]],
  'bore-out-of-round': [[bored]],
  'bore-wear': [[bored]],
  'piston-skirt': [[newPiston]],
  'piston-clearance': [[bored], [newPiston]],
  'ring-end-gap': [[newRings, newPiston, filedRings]],
  'ring-side-clearance': [[newRings, newPiston], [newPiston]],
  crankpin: [[ground]],
  'crankpin-out-of-round': [[ground]],
  'main-journal': [[newCrankshaft]],
  'main-journal-out-of-round': [[newCrankshaft]],
  'rod-big-end': [[newRod]],
  'rod-clearance': [[ground], [newRod]],
  'valve-stem-intake': [[newValves]],
  'valve-stem-exhaust': [[newValves]],
  // A reamed guide has another size than the book’s, so it is held to no band of a new one.
  'valve-guide-intake': [[newGuides]],
  'valve-guide-exhaust': [[newGuides]],
  'stem-clearance-intake': [[newValves], [newGuides]],
  'stem-clearance-exhaust': [[newValves], [newGuides]],
  'valve-spring-length': [[newSprings]],
  'seat-width': [[seatsCut, valvesAndSeats]],
  'head-flatness': [[headMachined]],
  'coil-resistance': [[newCoil]],
};

const covers = ({ subject, choices }: Renewal, cylinder: number, decision: PartDecision) =>
  decision.subject === subject &&
  choices.includes(decision.choice) &&
  (decision.cylinder === cylinder || decision.cylinder === 0 || cylinder === 0);

/**
 * The decisions that make a feature of a cylinder (0: of the engine) that of new parts; empty when it is of
 * parts that have run.
 */
export function renewalsOf<Decision extends PartDecision>(
  feature: Feature,
  cylinder: number,
  standing: readonly Decision[],
): Decision[] {
  const wanted = RENEWED_BY[feature] ?? [];
  const found = wanted.map((any) =>
    standing.filter((decision) => any.some((renewal) => covers(renewal, cylinder, decision))),
  );
  return found.some((decisions) => decisions.length === 0) ? [] : found.flat();
}

/** Whether a feature is that of new parts once this job is done. */
export const isRenewed = (
  feature: Feature,
  cylinder: number,
  standing: readonly PartDecision[],
): boolean => renewalsOf(feature, cylinder, standing).length > 0;

/** Limits as they hold in a phase: no wear limit for what is new by then. */
export const withoutWear = <Limits extends { wearLimit: number | null }>(
  limits: Limits,
  renewed: boolean,
  phase: Phase,
): Limits => (renewed && phase !== 'as-received' ? { ...limits, wearLimit: null } : limits);
