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
    'sump-bolts',
    'head-gasket',
    'head-bolts',
    'flywheel-key',
    'flywheel-nut',
  ],
  'air-gap': ['flywheel-key', 'flywheel-nut'],
  'valve-lash': ['timing-marks', 'head-gasket', 'head-bolts'],
  'test-run': [
    'rod-cap',
    'rod-bolts',
    'timing-marks',
    'sump-bolts',
    'head-gasket',
    'head-bolts',
    'flywheel-key',
    'flywheel-nut',
    'air-gap',
    'valve-lash',
  ],
};
