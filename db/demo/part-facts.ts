import type { FittedPart } from '../../shared/work/bench/deciding/decision-parts.ts';
import type { PartNumberKind } from '../../shared/work/parts/stock-words.ts';
import type { EngineKey } from './engines/index.ts';
import type { PartNumber } from './parts.ts';

/** What the invented shop knows of its parts beside the shelf: numbers, what took whose place, kits, fits. */

/** Parts that came after the shelves were first filled; a former one among them. */
export const DEMO_LATER_PARTS = [
  { number: 'VK-680-0016', description: 'Piston 0.25, first series', bin: 'B1-18', stock: 1 },
  { number: 'OS-172-032', description: 'Crankcase cover gasket, OH-172', bin: 'A1-16', stock: 2 },
  { number: 'OS-172-033', description: 'Exhaust gasket, OH-172', bin: 'A1-17', stock: 4 },
] as const;
type LaterNumber = (typeof DEMO_LATER_PARTS)[number]['number'];
type AnyNumber = PartNumber | LaterNumber;

export const DEMO_LATER_PRICE = { price: 890, cost: 410 };

interface Known {
  kind: PartNumberKind;
  whose: string;
  number: string;
}

export const DEMO_NUMBERS: Partial<Record<AnyNumber, readonly Known[]>> = {
  'VK-680-16': [
    { kind: 'maker', whose: 'Varnock', number: '680.16-025' },
    { kind: 'supplier', whose: 'Calder & Finch Engine Parts', number: 'CF 77 2016' },
  ],
  'OS-172-030': [{ kind: 'maker', whose: 'Ostrel', number: 'OH 172/30-K' }],
};

/** Who took whose place. */
export const DEMO_SUPERSEDED: readonly (readonly [former: AnyNumber, current: AnyNumber])[] = [
  ['VK-680-0016', 'VK-680-16'],
];

export const DEMO_KITS: Partial<Record<AnyNumber, readonly AnyNumber[]>> = {
  'OS-172-030': ['OS-172-031', 'OS-172-032', 'OS-172-033'],
};

export const DEMO_FITS: readonly (readonly [AnyNumber, EngineKey, FittedPart, step: number])[] = [
  ['VK-680-16', 'd680', 'piston', 0.25],
  ['VK-680-17', 'd680', 'rings', 0.25],
  ['OS-172-011', 'oh172', 'piston', 0.25],
];
