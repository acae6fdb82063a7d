import { display, displayNumber } from '../../../trade/index.ts';
import type { LineKind } from '../../vocabulary.ts';
import type { StandingDecision } from './decision-grounds.ts';
import {
  FITTED_PART_LABELS,
  type FittedPart,
  fittingParts,
  type ShelfPart,
} from './decision-parts.ts';
import { choiceLabel, partLabel } from './decision-rules.ts';
import type { Size } from './decision-sizes.ts';
import type { DecisionSubject } from './decisions.ts';

/** The lines of an estimate that follow from what was decided. Put there by a person, never by themselves. */

export interface DecidedPart extends StandingDecision {
  machineTo: Size | null;
}

export interface ProposedLine<Part> {
  kind: LineKind;
  description: string;
  part: Part | null;
  /** Thousandths. */
  quantity: number;
  unit: string;
  /** Minor units; 0 while it is to be set. */
  unitPrice: number;
  /** Neither the shelf nor the shop's rate gives a price. */
  priceToSet: boolean;
  /** Which decisions it comes from, and what has to be looked at, in sentences. */
  note: string;
}

export interface PricedPart extends ShelfPart {
  unit: string;
  /** Minor units. */
  sellsAt: number;
}

interface Shop<Part> {
  parts: readonly Part[];
  /** The engine's own and then its family's; none when the spec book has none for it. */
  models: readonly string[];
  cylinders: number;
  /** Minor units an hour. */
  labourRate: number;
}

const ONE = 1000;

type Wanted =
  | { what: 'part'; part: FittedPart; step: number }
  | { what: 'outside'; description: string }
  | { what: 'labour'; description: string };

const size = ({ low, high }: Size): string =>
  low === high ? display(low, 'mm') : `${displayNumber(low, 'mm')}–${display(high, 'mm')}`;

const toSize = (machineTo: Size | null): string =>
  machineTo === null ? ', fitted to the part' : `, to ${size(machineTo)}`;

const part = (name: FittedPart, step = 0): Wanted => ({ what: 'part', part: name, step });

const REPLACED: Partial<Record<DecisionSubject, readonly FittedPart[]>> = {
  cylinder: ['cylinder'],
  piston: ['piston'],
  rings: ['rings'],
  crankshaft: ['crankshaft'],
  'connecting-rod': ['connecting-rod'],
  valves: ['intake-valve', 'exhaust-valve'],
  // One at the intake and one at the exhaust.
  'valve-springs': ['valve-spring', 'valve-spring'],
  'valve-guides': ['valve-guide', 'valve-guide'],
  'valve-seats': ['valve-seat', 'valve-seat'],
  head: ['head'],
  coil: ['coil'],
  engine: ['engine'],
};

/** The work without which a new part is of no use. */
function fittingWork(subject: DecisionSubject, of: string): Wanted[] {
  if (subject === 'engine') return [{ what: 'labour', description: 'Change the engine over' }];
  if (subject === 'valve-guides')
    return [{ what: 'outside', description: `Fit and ream valve guides, cylinder${of}` }];
  if (subject === 'valve-seats')
    return [{ what: 'outside', description: `Fit and cut valve seats, cylinder${of}` }];
  return [];
}

/** What one decision asks for. */
function wantedBy(decision: DecidedPart, cylinders: number): Wanted[] {
  const { subject, choice, cylinder, machineTo } = decision;
  const step = decision.step ?? 0;
  const of = cylinder > 0 && cylinders > 1 ? ` ${cylinder}` : '';
  switch (choice) {
    case 'hone':
      return [{ what: 'labour', description: `Hone cylinder${of}` }];
    case 'next-oversize':
      if (subject === 'piston' || subject === 'rings') return [part(subject, step)];
      return [
        {
          what: 'outside',
          description: `Bore and hone cylinder${of} +${display(step, 'mm')}${toSize(machineTo)}`,
        },
      ];
    case 'undersize':
      if (subject === 'connecting-rod') return [part(subject, -step)];
      return [
        {
          what: 'outside',
          description: `Grind crankpin −${display(step, 'mm')}${toSize(machineTo)}`,
        },
      ];
    case 'resurface':
      return [
        {
          what: 'outside',
          description:
            subject === 'valves'
              ? `Reface valves and cut seats, cylinder${of}`
              : `Surface the head joint flat, cylinder${of}`,
        },
      ];
    case 'reface':
      return [{ what: 'outside', description: `Reface valves, cylinder${of}` }];
    case 'cut':
      return [
        {
          what: 'outside',
          description: `Cut valve seats 30, 45 and 60 degrees and narrow them, cylinder${of}`,
        },
      ];
    case 'lap':
      return [{ what: 'labour', description: `Lap valves into their seats, cylinder${of}` }];
    case 'ream':
      return [
        { what: 'outside', description: `Ream valve guides for oversize stems, cylinder${of}` },
      ];
    case 'file':
      return [{ what: 'labour', description: `File ring end gaps, cylinder${of}` }];
    case 'replace':
      return [...(REPLACED[subject] ?? []).map((name) => part(name)), ...fittingWork(subject, of)];
    case 'reuse':
    case 'stop':
      return [];
  }
}

/** Parts that are only seen with the crankcase or the cylinder open. */
const INSIDE: readonly DecisionSubject[] = [
  'cylinder',
  'piston',
  'rings',
  'crankshaft',
  'connecting-rod',
];
/** A spring is changed with the head on. */
const UNDER_THE_HEAD: readonly DecisionSubject[] = [
  'valves',
  'valve-guides',
  'valve-seats',
  'head',
];

/** Gaskets don't go back a second time: the whole set, or the head's where no more than that was open. */
function gaskets(decisions: readonly DecidedPart[], cylinders: number) {
  const decided = (subjects: readonly DecisionSubject[]) =>
    decisions.filter(({ subject }) => subjects.includes(subject));
  if (decided(INSIDE).length > 0)
    return [{ wanted: part('gasket-set'), count: 1, note: 'The engine was open.' }];
  const heads = new Set(decided(UNDER_THE_HEAD).map(({ cylinder }) => cylinder)).size;
  return heads === 0
    ? []
    : [
        {
          wanted: part('head-gasket'),
          count: Math.min(heads, cylinders),
          note: 'The head was off.',
        },
      ];
}

const stepWords = (step: number): string => {
  if (step > 0) return `, ${display(step, 'mm')} oversize`;
  return step < 0 ? `, ${display(-step, 'mm')} undersize` : '';
};

function partLine<Part extends PricedPart>(
  wanted: Wanted & { what: 'part' },
  { parts, models }: Shop<Part>,
): Omit<ProposedLine<Part>, 'quantity' | 'note'> {
  const [fitting] = fittingParts(parts, { ...wanted, models });
  const [own] = models;
  const named = own === undefined ? '' : `, ${own}`;
  return {
    kind: 'part',
    description:
      fitting?.description ?? `${FITTED_PART_LABELS[wanted.part]}${stepWords(wanted.step)}${named}`,
    part: fitting ?? null,
    unit: fitting?.unit ?? 'pc',
    unitPrice: fitting?.sellsAt ?? 0,
    priceToSet: fitting === undefined,
  };
}

function lineFor<Part extends PricedPart>(wanted: Wanted, shop: Shop<Part>) {
  switch (wanted.what) {
    case 'part':
      return partLine(wanted, shop);
    case 'labour':
      return {
        kind: 'labour' as const,
        description: wanted.description,
        part: null,
        unit: 'h',
        unitPrice: shop.labourRate,
        priceToSet: false,
      };
    case 'outside':
      return {
        kind: 'outside' as const,
        description: wanted.description,
        part: null,
        unit: 'pc',
        unitPrice: 0,
        priceToSet: true,
      };
  }
}

/** What has to be looked at before the line is sent. */
function caveat(line: Omit<ProposedLine<ShelfPart>, 'note'>): string {
  if (line.kind === 'labour') return 'One hour is written in: set the hours.';
  if (line.part !== null && line.part.onHand < line.quantity)
    return 'The shelf holds fewer: order.';
  return line.priceToSet ? 'Price to be set.' : '';
}

/**
 * The lines that follow from the decisions that stand. None while a stop stands anywhere, since then
 * nothing is built; only the exchange where the engine as a whole is exchanged.
 */
export function proposalsFrom<Part extends PricedPart>(
  decisions: readonly DecidedPart[],
  shop: Shop<Part>,
): ProposedLine<Part>[] {
  if (decisions.some(({ choice }) => choice === 'stop')) return [];
  const exchange = decisions.filter(
    ({ subject, choice }) => subject === 'engine' && choice === 'replace',
  );
  const followed = exchange.length > 0 ? exchange : decisions;
  const asked = [
    ...followed.flatMap((decision) =>
      wantedBy(decision, shop.cylinders).map((wanted) => ({
        wanted,
        count: 1,
        note: `${partLabel(decision, shop.cylinders)}: ${choiceLabel(decision.subject, decision.choice).toLowerCase()}.`,
      })),
    ),
    ...(exchange.length > 0 ? [] : gaskets(decisions, shop.cylinders)),
  ];
  const same = Map.groupBy(asked, ({ wanted }) => JSON.stringify(wanted));
  return [...same.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const quantity = group.reduce((sum, { count }) => sum + count * ONE, 0);
    const line = { ...lineFor(first.wanted, shop), quantity };
    const notes = [...new Set(group.map(({ note }) => note)), caveat(line)].filter(Boolean);
    return [{ ...line, note: notes.join(' ') }];
  });
}
