import type { UsualStep } from './usual-step.ts';

/** What an engine is filled with, and what is seen to before it runs. Common practice, no source. */
export const FINISHING_STEPS: readonly UsualStep[] = [
  {
    key: 'plug-gap',
    kind: 'measure',
    label: 'Plug gap set, plug tightened',
    needs: ['plug-gap'],
    areas: ['service', 'ignition', 'head', 'cylinder', 'crankcase'],
  },
  {
    key: 'oil',
    kind: 'quantity',
    label: 'Oil filled to the mark, grade and amount noted on the engine',
    unit: 'ml',
    grade: true,
    areas: ['service', 'crankcase'],
    cycle: 'four-stroke',
  },
  {
    key: 'fuel-mix',
    kind: 'confirm',
    label: 'Fuel mixed with oil at the maker’s ratio',
    caution: 'Fill outdoors, away from flame.',
    areas: ['service', 'fuel', 'cylinder', 'crankcase'],
    cycle: 'two-stroke',
  },
  {
    key: 'blade',
    kind: 'confirm',
    label: 'Blade sharp, balanced and uncracked, its bolt tight',
    caution: 'Lead off and gloves on: the blade cuts, and it turns the engine.',
    areas: ['cutting', 'service'],
    machines: ['mower', 'riding-mower'],
  },
  {
    key: 'chain',
    kind: 'confirm',
    label: 'Chain sharp and at its tension; catcher, guard and brake whole',
    caution: 'Gloves: the chain cuts also when it stands.',
    areas: ['cutting', 'service'],
    machines: ['chainsaw'],
  },
  {
    key: 'belts',
    kind: 'confirm',
    label: 'Belts whole and at their tension, clutch lets go fully',
    caution: 'Engine stopped and lead off: belts and pulleys take fingers.',
    hold: false,
    areas: ['cutting', 'service'],
    machines: ['riding-mower', 'tiller', 'snow-thrower'],
  },
  {
    key: 'guards',
    kind: 'confirm',
    label: 'Guards, shrouds and belts back in place, every bolt in',
    areas: 'always',
  },
  {
    key: 'as-built',
    kind: 'photo',
    label: 'Photo of the engine as built',
    hold: false,
    areas: ['crankcase', 'cylinder'],
  },
  {
    key: 'test-run',
    kind: 'run',
    label: 'Test run: stop switch, interlocks, governor, leaks, fasteners again',
    caution:
      'Exhaust outside (carbon monoxide). Keep clear of tines, blades and belts; hot surfaces.',
    areas: 'always',
  },
];
