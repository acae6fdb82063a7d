import { EARTH_THE_LEAD, type UsualStep } from './usual-step.ts';

/** Flywheel and ignition, in their order. Common practice, no source. */
export const IGNITION_STEPS: readonly UsualStep[] = [
  {
    key: 'flywheel-key',
    kind: 'confirm',
    label: 'Flywheel key whole and seated, keyways and taper clean and dry',
    caution: 'A loose flywheel can leave the engine.',
    note: 'A key that is sheared, even by half, shifts the timing: new key, keyways looked at, cracked flywheels out.',
    areas: ['ignition', 'crankcase'],
  },
  {
    key: 'flywheel-nut',
    kind: 'torque',
    label: 'Flywheel nut tightened to its torque',
    caution: 'Hold the flywheel by its strap or tool, never by a bar in the fins.',
    needs: ['flywheel-nut-torque'],
    areas: ['ignition', 'crankcase'],
  },
  {
    key: 'air-gap',
    kind: 'measure',
    label: 'Coil air gap set at every leg with the leaf still in',
    caution: EARTH_THE_LEAD,
    needs: ['coil-air-gap'],
    areas: ['ignition', 'crankcase'],
  },
];

/** What is put back on the outside, in its order. */
export const OUTSIDE_STEPS: readonly UsualStep[] = [
  {
    key: 'both-fire',
    kind: 'confirm',
    label: 'Each cylinder: lead on its own plug, spark seen at a tester',
    caution: 'Tester clipped to bare metal, away from fuel: the spark lights vapour.',
    areas: ['ignition', 'crankcase', 'cylinder'],
    several: true,
  },
  {
    key: 'wiring',
    kind: 'wiring',
    label: 'Wiring colour to colour, confirmed against a diagram',
    caution: 'Battery: negative off first and on last; no spark or flame, it gives off hydrogen.',
    areas: ['wiring', 'crankcase'],
  },
  {
    key: 'governor-linkage',
    kind: 'confirm',
    label: 'Governor set at rest: throttle wide open, arm at its stop, clamp tight',
    caution: 'Set wrong, the engine runs away. Governor springs fly: eye protection.',
    note: 'Throttle wide open, shaft turned as far as the governor would push it, then the clamp. Spring in the hole it came from.',
    areas: ['governor', 'crankcase'],
    cycle: 'four-stroke',
  },
  {
    key: 'breather',
    kind: 'confirm',
    label: 'Crankcase breather clean, its valve free, hose whole',
    hold: false,
    areas: ['crankcase', 'head'],
    cycle: 'four-stroke',
  },
  {
    key: 'starter',
    kind: 'confirm',
    label: 'Starter pulls, catches and returns; rope and spring whole',
    caution: 'Eye protection: the recoil spring flies. Let the tension off before it is opened.',
    areas: ['starter'],
  },
  {
    key: 'fuel-system',
    kind: 'confirm',
    label: 'Tank and hoses clean, fuel filter new, nothing weeps',
    caution: 'Drain and fill outdoors, engine cold, away from flame. No hot work on a tank.',
    areas: ['fuel', 'service', 'crankcase'],
  },
  {
    key: 'air-filter',
    kind: 'confirm',
    label: 'Air filter clean or new, its housing tight',
    hold: false,
    areas: ['service', 'fuel', 'crankcase'],
  },
];
