import type { DemoEngine } from './engine.ts';

const manual = { unit: 'mm', source: 'kestwick-manual' } as const;
const measured = { unit: 'mm', source: 'kestwick-measured' } as const;
const speed = { unit: '1/min', source: 'kestwick-manual' } as const;
const checked = { confirmed: { by: 'ruth' } } as const;

/** Invented: a large single for splitters, chippers, generators and snow throwers. */
export const K416: DemoEngine = {
  make: 'Kestwick',
  model: 'K-416',
  cycle: 'four-stroke',
  cylinders: 1,
  bore: 89,
  stroke: 67,
  note: 'Balance shaft: three timing marks, not two.',
  specifications: {
    bore: {
      low: '89.000',
      high: '89.020',
      wearLimit: '89.120',
      ...manual,
      page: '4.12',
      ...checked,
    },
    'piston-skirt': {
      low: '88.950',
      high: '88.970',
      wearLimit: '88.860',
      ...manual,
      page: '4.14',
      ...checked,
    },
    'ring-end-gap': {
      low: '0.20',
      high: '0.45',
      wearLimit: '1.00',
      ...manual,
      page: '4.15',
      ...checked,
    },
    crankpin: { low: '33.970', high: '33.985', wearLimit: '33.930', ...manual, page: '5.4' },
    'rod-big-end': { low: '34.015', high: '34.030', wearLimit: '34.070', ...manual, page: '5.4' },
    'crankshaft-end-play': { low: '0.05', high: '0.45', wearLimit: '0.70', ...manual, page: '5.9' },
    'head-flatness': { high: '0.10', ...manual, page: '3.6', ...checked },
    'coil-air-gap': { low: '0.25', high: '0.45', aim: '0.35', ...manual, page: '7.2', ...checked },
    'valve-lash-intake': {
      low: '0.13',
      high: '0.17',
      aim: '0.15',
      condition: 'cold',
      ...manual,
      page: '3.9',
      ...checked,
    },
    'valve-lash-exhaust': {
      low: '0.18',
      high: '0.22',
      aim: '0.20',
      condition: 'cold',
      ...manual,
      page: '3.9',
      ...checked,
    },
    'plug-gap': { low: '0.70', high: '0.80', aim: '0.75', ...manual, page: '7.1', ...checked },
    'head-bolt-torque': {
      low: '36',
      high: '40',
      aim: '38',
      unit: 'N·m',
      condition: 'threads dry',
      source: 'kestwick-manual',
      page: '3.7',
      ...checked,
      fastener: {
        diameter: 10,
        pitch: 1.5,
        propertyClass: '8.8',
        count: 4,
        pattern: 'cross',
        stages: [0.4, 0.7, 1],
      },
    },
    compression: { low: '450', unit: 'kPa', source: 'kestwick-measured', page: '1' },
    'coil-resistance': {
      low: '6.5',
      high: '8.5',
      unit: 'kΩ',
      source: 'kestwick-measured',
      page: '1',
    },
    'bore-taper': { high: '0.06', ...manual, page: '4.12', ...checked },
    'bore-out-of-round': { high: '0.04', ...manual, page: '4.12', ...checked },
    'piston-clearance': { low: '0.030', high: '0.070', wearLimit: '0.15', ...measured, page: '2' },
    'rod-clearance': { low: '0.030', high: '0.060', wearLimit: '0.12', ...measured, page: '2' },
    'idle-speed': { low: '1600', high: '1800', ...speed, page: '2.4', ...checked },
    'top-speed': { low: '3650', high: '3850', ...speed, page: '2.4' },
  },
};
