import { EARTH_THE_LEAD, type UsualStep } from './usual-step.ts';

/** What is built inside the crankcase and the cylinder, in its order. Common practice, no source. */
export const INSIDE_STEPS: readonly UsualStep[] = [
  {
    key: 'piston-way',
    kind: 'orientation',
    label: 'Piston the right way round, pin clips seated',
    caution: 'Eye protection: clips fly.',
    note: 'Arrow or mark as the source says. New clips, each turned in its groove to see that it sits.',
    areas: ['cylinder'],
  },
  {
    key: 'ring-gaps',
    kind: 'measure',
    label: 'Ring gaps measured in this bore and staggered',
    caution: 'Eye protection: rings snap.',
    needs: ['ring-end-gap'],
    note: 'Each ring with its mark up; no gap above another, none at the valve side of the bore.',
    areas: ['cylinder'],
    cycle: 'four-stroke',
  },
  {
    key: 'ring-pins',
    kind: 'measure',
    label: 'Ring gaps measured in this bore, each gap on its pin',
    caution: 'Eye protection: rings snap.',
    needs: ['ring-end-gap'],
    note: 'Two-strokes pin their rings: the ends close over the pin, clear of the ports. Never staggered.',
    areas: ['cylinder'],
    cycle: 'two-stroke',
  },
  {
    key: 'rod-cap',
    kind: 'orientation',
    label: 'Rod cap the right way round, match marks together',
    note: 'Match marks of rod and cap on the same side, the rod facing as it came out.',
    needs: ['crankpin', 'rod-big-end'],
    areas: ['crankcase', 'cylinder'],
  },
  {
    key: 'rod-bolts',
    kind: 'torque',
    label: 'Rod bolts tightened to their torque',
    caution: 'A rod bolt that lets go breaks through the crankcase.',
    note: 'Bolts, locks and oil on the threads as the source says; the rod turns freely on its pin after.',
    needs: ['rod-bolt-torque'],
    areas: ['crankcase', 'cylinder'],
    cycle: 'four-stroke',
  },
  {
    key: 'timing-marks',
    kind: 'orientation',
    label: 'Timing marks of crankshaft and camshaft together',
    note: 'Tappets first, each in its own bore. Then mark to mark; with a balance shaft, its mark as well.',
    areas: ['crankcase'],
    cycle: 'four-stroke',
  },
  {
    key: 'governor-inside',
    kind: 'confirm',
    label: 'Governor gear and cup turn freely, oil pump or dipper in place',
    hold: false,
    areas: ['crankcase'],
    cycle: 'four-stroke',
  },
  {
    key: 'crankcase-shut',
    kind: 'confirm',
    label: 'Crankcase shut: new gasket, dowels in, seals whole',
    caution: 'Old gaskets may hold asbestos: wet, don’t sand or blow.',
    note: 'Seal lips oiled and led over the keyway; cover bolts crosswise to the torque of the source.',
    areas: ['crankcase'],
  },
  {
    key: 'end-play',
    kind: 'measure',
    label: 'Crankshaft end play measured with the crankcase shut',
    note: 'Set by gasket or shim as the source says.',
    needs: ['crankshaft-end-play'],
    areas: ['crankcase'],
    cycle: 'four-stroke',
  },
  {
    key: 'reeds',
    kind: 'confirm',
    label: 'Reeds flat and whole, if it has them; intake flange straight',
    hold: false,
    areas: ['crankcase', 'fuel'],
    cycle: 'two-stroke',
  },
];

/** What shows that a two-stroke's crankcase is tight, once cylinder and head are on. */
export const TIGHTNESS_STEPS: readonly UsualStep[] = [
  {
    key: 'pressure-test',
    kind: 'quantity',
    label: 'Pressure test: pumped to 50 kPa, what is left after a minute',
    unit: 'kPa',
    caution: 'Hands clear: pressure can turn the crankshaft. Never more than 70 kPa.',
    note: 'Intake and exhaust closed off, piston at the bottom. 50 kPa is 7 psi; a fall of more than 10 kPa is a leak: find it with soapy water. Common practice, no source.',
    areas: ['crankcase', 'cylinder'],
    cycle: 'two-stroke',
  },
  {
    key: 'vacuum-test',
    kind: 'quantity',
    label: 'Vacuum test: drawn to 50 kPa, what is left after a minute',
    unit: 'kPa',
    note: '50 kPa is 15 inHg. Seals that hold pressure may leak under vacuum: both are tried. Common practice, no source.',
    areas: ['crankcase', 'cylinder'],
    cycle: 'two-stroke',
  },
];

export const TURNED_BY_HAND: UsualStep = {
  key: 'turned-by-hand',
  kind: 'confirm',
  label: 'Turned by hand a full cycle, nothing touching',
  caution: EARTH_THE_LEAD,
  areas: ['crankcase', 'cylinder', 'head'],
};
