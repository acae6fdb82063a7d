import type { MachineKind } from '../../shared/work/vocabulary.ts';
import type { CustomerKey } from './customers.ts';
import type { EngineKey } from './engines/index.ts';

export interface DemoMachine {
  customer: CustomerKey;
  kind: MachineKind;
  make: string;
  model: string;
  serial: string;
  engine: { model: EngineKey; typeCode: string; serial: string; dateCode: string };
}

/** Invented machines of invented makers. */
export const DEMO_MACHINES = {
  'lucja-tiller': {
    customer: 'lucja',
    kind: 'tiller',
    make: 'Furrowell',
    model: 'Terra 5',
    serial: 'FT5-20417',
    engine: { model: 'oh172', typeCode: 'H2-4', serial: 'OH4411907', dateCode: '2106' },
  },
  'lucja-mower': {
    customer: 'lucja',
    kind: 'mower',
    make: 'Tharnfield',
    model: 'Lawnlark 20',
    serial: 'TL-88140',
    engine: { model: 'v190', typeCode: '190-07', serial: 'BV190 33518', dateCode: '19 C 2' },
  },
  'hakon-splitter': {
    customer: 'hakon',
    kind: 'log-splitter',
    make: 'Stavemark',
    model: 'Cleaver 27',
    serial: 'SC27-00916',
    engine: { model: 'k416', typeCode: 'S', serial: 'K416-71002', dateCode: '1811' },
  },
  'hakon-snow': {
    customer: 'hakon',
    kind: 'snow-thrower',
    make: 'Drifthorn',
    model: '28 Track',
    serial: 'DH28T-4471',
    engine: { model: 'k416', typeCode: 'W', serial: 'K416-80655', dateCode: '2009' },
  },
  'eleni-pump': {
    customer: 'eleni',
    kind: 'pump',
    make: 'Hobrook',
    model: 'Weir 50',
    serial: 'HW50-3382',
    engine: { model: 'oh172', typeCode: 'H1-1', serial: 'OH3907724', dateCode: '1710' },
  },
  'eleni-generator': {
    customer: 'eleni',
    kind: 'generator',
    make: 'Lumenvale',
    model: 'LV 5500',
    serial: 'LV55-10093',
    engine: { model: 'k416', typeCode: 'G', serial: 'K416-66127', dateCode: '1604' },
  },
  'hanako-mower': {
    customer: 'hanako',
    kind: 'mower',
    make: 'Tharnfield',
    model: 'Lawnlark 18',
    serial: 'TL-61177',
    engine: { model: 'v190', typeCode: '190-02', serial: 'BV190 20844', dateCode: '15 A 1' },
  },
  'orchard-rider': {
    customer: 'orchard',
    kind: 'riding-mower',
    make: 'Quillmoor',
    model: 'Sward 48',
    serial: 'QS48-7730',
    engine: { model: 'd680', typeCode: 'R', serial: 'VD680-11829', dateCode: '1805' },
  },
  'orchard-chipper': {
    customer: 'orchard',
    kind: 'chipper',
    make: 'Stavemark',
    model: 'Brushwolf 4',
    serial: 'SB4-02210',
    engine: { model: 'k416', typeCode: 'S', serial: 'K416-72944', dateCode: '1903' },
  },
  'orchard-pump': {
    customer: 'orchard',
    kind: 'pump',
    make: 'Hobrook',
    model: 'Weir 80',
    serial: 'HW80-0517',
    engine: { model: 'oh172', typeCode: 'H1-3', serial: 'OH4200365', dateCode: '1905' },
  },
  'brigade-generator': {
    customer: 'brigade',
    kind: 'generator',
    make: 'Lumenvale',
    model: 'LV 9000 Twin',
    serial: 'LV90-00641',
    engine: { model: 'd680', typeCode: 'G', serial: 'VD680-09077', dateCode: '1512' },
  },
  'brigade-pump': {
    customer: 'brigade',
    kind: 'pump',
    make: 'Hobrook',
    model: 'Carry 2',
    serial: 'HC2-1188',
    engine: { model: 'p62', typeCode: 'F', serial: 'PB62 5502', dateCode: '14-31' },
  },
  'desmond-rider': {
    customer: 'desmond',
    kind: 'riding-mower',
    make: 'Quillmoor',
    model: 'Sward 42',
    serial: 'QS42-3016',
    engine: { model: 'd680', typeCode: 'R', serial: 'VD680-04415', dateCode: '1307' },
  },
  'bjork-snow': {
    customer: 'bjork',
    kind: 'snow-thrower',
    make: 'Drifthorn',
    model: '22 Wheel',
    serial: 'DH22W-1905',
    engine: { model: 'oh172', typeCode: 'W1', serial: 'OH4388120', dateCode: '2010' },
  },
  'olena-tiller': {
    customer: 'olena',
    kind: 'tiller',
    make: 'Furrowell',
    model: 'Terra 3',
    serial: 'FT3-15559',
    engine: { model: 'oh172', typeCode: 'H2-1', serial: 'OH3655012', dateCode: '1603' },
  },
  'beatriz-washer': {
    customer: 'beatriz',
    kind: 'pressure-washer',
    make: 'Hobrook',
    model: 'Jetline 200',
    serial: 'HJ200-7741',
    engine: { model: 'oh172', typeCode: 'H1-7', serial: 'OH4517783', dateCode: '2204' },
  },
  'thaddeus-kart': {
    customer: 'thaddeus',
    kind: 'kart',
    make: 'Corvane',
    model: 'Sprint J',
    serial: 'CSJ-0339',
    engine: { model: 'p62', typeCode: 'K', serial: 'PB62 7120', dateCode: '19-08' },
  },
  'mai-mower': {
    customer: 'mai',
    kind: 'mower',
    make: 'Tharnfield',
    model: 'Lawnlark 20',
    serial: 'TL-90266',
    engine: { model: 'v190', typeCode: '190-07', serial: 'BV190 41190', dateCode: '21 B 2' },
  },
  'walter-saw': {
    customer: 'walter',
    kind: 'chainsaw',
    make: 'Sylvarn',
    model: 'S 62',
    serial: 'SY62-48813',
    engine: { model: 'p62', typeCode: 'S', serial: 'PB62 3907', dateCode: '11-44' },
  },
  'fionnuala-chipper': {
    customer: 'fionnuala',
    kind: 'chipper',
    make: 'Stavemark',
    model: 'Brushwolf 2',
    serial: 'SB2-06634',
    engine: { model: 'oh172', typeCode: 'H2-9', serial: 'OH4490218', dateCode: '2111' },
  },
} as const satisfies Record<string, DemoMachine>;

export type MachineKey = keyof typeof DEMO_MACHINES;
