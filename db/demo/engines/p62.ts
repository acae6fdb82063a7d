import type { DemoEngine } from './engine.ts';

const manual = { unit: 'mm', source: 'pellaby-manual' } as const;
const speed = { unit: '1/min', source: 'pellaby-manual' } as const;
const checked = { confirmed: { by: 'wren' } } as const;

/** Invented: a two-stroke with a loose head and a split rod in a bronze bush. */
export const P62: DemoEngine = {
  make: 'Pellaby',
  model: 'P-62',
  cycle: 'two-stroke',
  cylinders: 1,
  bore: 47,
  stroke: 36,
  note: 'Fuel and oil 40 : 1. Loose head, split rod in a bronze bush.',
  specifications: {
    bore: { low: '47.000', high: '47.012', wearLimit: '47.060', ...manual, page: '9', ...checked },
    'piston-skirt': {
      low: '46.945',
      high: '46.957',
      wearLimit: '46.880',
      ...manual,
      page: '9',
      ...checked,
    },
    'ring-end-gap': {
      low: '0.10',
      high: '0.30',
      wearLimit: '0.70',
      ...manual,
      page: '10',
      ...checked,
    },
    crankpin: { low: '17.982', high: '17.993', wearLimit: '17.950', ...manual, page: '12' },
    'rod-big-end': { low: '18.016', high: '18.027', wearLimit: '18.060', ...manual, page: '12' },
    'crankshaft-end-play': { low: '0.05', high: '0.35', wearLimit: '0.50', ...manual, page: '13' },
    'head-flatness': { high: '0.05', unit: 'mm', source: 'handbook', page: '112' },
    'coil-air-gap': { low: '0.20', high: '0.40', aim: '0.30', ...manual, page: '15', ...checked },
    'plug-gap': { low: '0.55', high: '0.65', aim: '0.60', ...manual, page: '15', ...checked },
    'head-bolt-torque': {
      low: '9',
      high: '11',
      aim: '10',
      unit: 'N·m',
      condition: 'threads dry',
      source: 'pellaby-manual',
      page: '8',
      fastener: {
        diameter: 6,
        pitch: 1,
        propertyClass: '8.8',
        count: 4,
        pattern: 'cross',
        stages: [0.5, 1],
      },
    },
    compression: { low: '900', unit: 'kPa', source: 'heard-kart', page: '' },
    'coil-resistance': { low: '4.0', high: '6.0', unit: 'kΩ', source: 'practice', page: '' },
    'bore-taper': { high: '0.03', ...manual, page: '9' },
    'bore-out-of-round': { high: '0.02', ...manual, page: '9' },
    'piston-clearance': { low: '0.043', high: '0.067', wearLimit: '0.13', ...manual, page: '9' },
    'rod-clearance': { low: '0.020', high: '0.050', wearLimit: '0.09', ...manual, page: '12' },
    'idle-speed': { low: '2600', high: '2900', ...speed, page: '6' },
    'top-speed': {
      low: '11300',
      high: '12000',
      unit: 'rpm',
      condition: 'without load for as short as it can be read',
      source: 'heard-kart',
      page: '',
    },
  },
};
