/** What kind of work a job is, and what of the machine is touched by it: its steps follow from both. */

export const WORK_KINDS = ['rebuild', 'repair', 'service'] as const;
export type WorkKind = (typeof WORK_KINDS)[number];

export const WORK_KIND_LABELS: Record<WorkKind, string> = {
  rebuild: 'Rebuild',
  repair: 'Repair',
  service: 'Service',
};

export const WORK_KIND_HINTS: Record<WorkKind, string> = {
  rebuild: 'The engine is opened, measured and built up again: every step.',
  repair: 'One fault is mended: the steps of what is touched, and the test run.',
  service: 'Oil, plug, filters, fuel, blade or chain, and the test run. The engine stays closed.',
};

/** What of a machine can be opened or taken off by itself. */
export const WORK_AREAS = [
  'crankcase',
  'cylinder',
  'head',
  'ignition',
  'fuel',
  'starter',
  'wiring',
  'governor',
  'cutting',
  'service',
] as const;
export type WorkArea = (typeof WORK_AREAS)[number];

export const WORK_AREA_LABELS: Record<WorkArea, string> = {
  crankcase: 'Crankcase, crankshaft, rod',
  cylinder: 'Cylinder, piston, rings',
  head: 'Head and valves',
  ignition: 'Flywheel, coil',
  fuel: 'Tank, lines, carburetor',
  starter: 'Starter',
  wiring: 'Wiring and switches',
  governor: 'Governor',
  cutting: 'Blade, tines, chain, belts',
  service: 'Oil, plug, filters',
};

/** What is touched by each kind of work; of a repair it is said. A rebuild is of the engine, not of the blade. */
export function touchedBy(work: WorkKind, said: readonly WorkArea[]): readonly WorkArea[] {
  if (work === 'repair') return said;
  return work === 'service' ? ['service'] : WORK_AREAS.filter((area) => area !== 'cutting');
}

/** `Repair: starter`; empty where nobody said what it is. */
export function workInWords({
  work,
  touched,
}: {
  work: WorkKind | null;
  touched: readonly WorkArea[];
}): string {
  if (work === null) return '';
  const areas = touched.map((area) => WORK_AREA_LABELS[area].toLowerCase()).join('; ');
  return [WORK_KIND_LABELS[work], areas].filter(Boolean).join(': ');
}
