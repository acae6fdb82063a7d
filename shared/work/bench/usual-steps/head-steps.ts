import { EARTH_THE_LEAD, type UsualStep } from './usual-step.ts';

/** Head and valves, in their order. Common practice, no source. */
export const HEAD_STEPS: readonly UsualStep[] = [
  {
    key: 'tappet-clearance',
    kind: 'measure',
    label: 'Tappet clearance measured cold, stem ground to it',
    caution: 'Eye protection: valve springs fly, and a grinder throws sparks.',
    note: 'Side valves have no screw: too little is ground off the end of the stem, square; too much wants another valve or seat work. Springs and keepers in after.',
    needs: ['valve-lash-intake', 'valve-lash-exhaust'],
    areas: ['head'],
    cycle: 'four-stroke',
    valves: 'side',
  },
  {
    key: 'head-gasket',
    kind: 'orientation',
    label: 'Head gasket new and the right way round',
    caution: 'Old gaskets may hold asbestos: wet, don’t sand or blow.',
    note: 'Marking or raised bead as the source says, every passage open.',
    areas: ['head', 'cylinder', 'crankcase'],
  },
  {
    key: 'head-bolts',
    kind: 'torque',
    label: 'Head bolts tightened in stages and in order',
    note: 'Threads clean, dry or oiled as the source says; long and short bolts in their own holes.',
    needs: ['head-bolt-torque'],
    areas: ['head', 'cylinder', 'crankcase'],
  },
  {
    key: 'valve-train',
    kind: 'confirm',
    label: 'Push rods and rocker arms seated, each in its own place',
    note: 'Push rods straight, in their tappets and in the guide plate; caps on the stems that had them.',
    areas: ['head', 'crankcase'],
    cycle: 'four-stroke',
    valves: 'overhead',
  },
  {
    key: 'valve-lash',
    kind: 'measure',
    label: 'Valve lash set cold on the compression stroke, at or just past top dead centre',
    caution: EARTH_THE_LEAD,
    needs: ['valve-lash-intake', 'valve-lash-exhaust'],
    areas: ['head', 'crankcase', 'service'],
    cycle: 'four-stroke',
    notValves: 'side',
  },
];
