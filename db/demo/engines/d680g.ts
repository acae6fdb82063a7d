import type { DemoVariant } from './engine.ts';

const sheet = { source: 'varnock-sheet-g', confirmed: { by: 'ignacio' } } as const;

/** Invented: the D-680 as it is built for generators, with a larger flywheel and wider lash. */
export const D680G: DemoVariant = {
  model: 'D-680 G-LR',
  note: 'Long-running generator version: heavy flywheel, stellite exhaust seats. The rest is D-680.',
  specifications: {
    'valve-lash-exhaust': {
      low: '0.13',
      high: '0.18',
      aim: '0.15',
      unit: 'mm',
      condition: 'cold',
      page: '1',
      ...sheet,
    },
    'flywheel-nut-torque': {
      low: '66',
      high: '72',
      aim: '69',
      unit: 'N·m',
      condition: 'taper dry',
      page: '1',
      ...sheet,
    },
  },
};
