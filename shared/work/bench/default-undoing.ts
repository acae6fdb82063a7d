/**
 * Which of the usual steps a later one undoes, by their keys: the head settles as it is tightened, and what
 * was turned or set before is turned or set again. Common practice, no source; a maker's sheet may ask for
 * more.
 */
export const UNDONE_BY: Readonly<Record<string, readonly string[]>> = {
  'turned-by-hand': [
    'rod-cap',
    'rod-bolts',
    'timing-marks',
    'crankcase-shut',
    'head-gasket',
    'head-bolts',
    'flywheel-key',
    'flywheel-nut',
  ],
  'end-play': ['crankcase-shut', 'timing-marks'],
  'pressure-test': ['crankcase-shut', 'head-gasket', 'head-bolts'],
  'vacuum-test': ['crankcase-shut', 'head-gasket', 'head-bolts'],
  'tappet-clearance': ['timing-marks'],
  'air-gap': ['flywheel-key', 'flywheel-nut'],
  'valve-lash': ['timing-marks', 'head-gasket', 'head-bolts', 'valve-train'],
  'test-run': [
    'rod-cap',
    'rod-bolts',
    'timing-marks',
    'crankcase-shut',
    'head-gasket',
    'head-bolts',
    'flywheel-key',
    'flywheel-nut',
    'air-gap',
    'valve-lash',
    'tappet-clearance',
    'governor-linkage',
    'guards',
  ],
};
