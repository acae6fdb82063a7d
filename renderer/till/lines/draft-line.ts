import type { PartId } from '../../../shared/contract/ids.ts';
import type { Part } from '../../../shared/contract/parts/index.ts';
import { type Line, LineInput, type TillRules } from '../../../shared/contract/till/index.ts';
import {
  type BillMargin,
  editableMoney,
  editableQuantity,
  isByRule,
  lineFigures,
  parseMoney,
  parseQuantity,
  type Rounding,
} from '../../../shared/money/index.ts';
import type { LineKind } from '../../../shared/work/vocabulary.ts';

/** A line of a bill while it is typed: figures are text, exactly as they stand in the cells. */
export interface DraftLine {
  /** Tells the rows apart; never sent. */
  key: number;
  kind: LineKind;
  description: string;
  partId: PartId | null;
  partNumber: string;
  quantity: string;
  unit: string;
  unitPrice: string;
  /** What stands behind the price, carried along as it is. */
  behind: Pick<LineInput, 'unitCost' | 'priceFrom' | 'workKind' | 'note' | 'discount'>;
}

const NOTHING_BEHIND: DraftLine['behind'] = {
  unitCost: null,
  priceFrom: 'typed',
  workKind: '',
  note: '',
  discount: null,
};

/** The cells of a row, in the order in which Enter goes through them. */
export const CELLS = ['kind', 'description', 'quantity', 'unit', 'unitPrice'] as const;
export type Cell = (typeof CELLS)[number];

/** How the shop writes, rounds and prices. */
export interface MoneyRules
  extends Pick<TillRules, 'labourRates' | 'labourCost' | 'outsideMarkupPpm' | 'supplies'> {
  currency: string;
  locale: string;
  rounding: Rounding;
  /** Minor units for an hour. */
  labourRate: number;
}

/** A key that no line has yet. */
export const nextKey = (lines: readonly DraftLine[]): number =>
  lines.reduce((highest, line) => Math.max(highest, line.key), 0) + 1;

type Beginning = Pick<DraftLine, 'description' | 'unit' | 'unitPrice' | 'behind'>;

/** What a kind of line begins with: labour is by the hour at the shop's rate, supplies go by its rule. */
function beginsWith(kind: LineKind, rules: MoneyRules): Beginning {
  const nothing = { description: '', unit: 'pc', unitPrice: '', behind: NOTHING_BEHIND };
  if (kind === 'labour')
    return {
      ...nothing,
      unit: 'h',
      unitPrice: editableMoney(rules.labourRate, rules.currency, rules.locale),
      behind: { ...NOTHING_BEHIND, unitCost: rules.labourCost, priceFrom: 'labour-rate' },
    };
  if (kind === 'supplies' && rules.supplies !== null)
    return {
      ...nothing,
      description: 'Shop supplies',
      behind: { ...NOTHING_BEHIND, priceFrom: 'supplies-rule' },
    };
  return nothing;
}

/** An empty line of a kind, to stand below the others. */
export const emptyLine = (
  lines: readonly DraftLine[],
  kind: LineKind,
  rules: MoneyRules,
): DraftLine => ({
  key: nextKey(lines),
  kind,
  partId: null,
  partNumber: '',
  quantity: '1',
  ...beginsWith(kind, rules),
});

/** Changes the kind; words, unit and price follow as long as nobody has typed others. */
export function withKind(line: DraftLine, kind: LineKind, rules: MoneyRules): DraftLine {
  const old = beginsWith(line.kind, rules);
  const fresh = beginsWith(kind, rules);
  const priced = line.unitPrice !== old.unitPrice && !isByRule(line.behind);
  const { note, discount } = line.behind;
  return {
    ...line,
    kind,
    description: line.description === old.description ? fresh.description : line.description,
    unit: line.unit === old.unit ? fresh.unit : line.unit,
    unitPrice: priced ? line.unitPrice : fresh.unitPrice,
    behind: priced ? withoutRate(line.behind) : { ...fresh.behind, note, discount },
  };
}

/** What a line takes from a part. */
type ShelfPart = Pick<
  Part,
  'id' | 'number' | 'description' | 'unit' | 'cost' | 'sellsAt' | 'sellsBy'
>;

/** A price that stays when its line is no labour any more came from nowhere but the keyboard. */
const withoutRate = (behind: DraftLine['behind']): DraftLine['behind'] =>
  behind.priceFrom === 'labour-rate' ? { ...behind, priceFrom: 'typed', workKind: '' } : behind;

/** The line as a part from the shelf: number, description, unit and price are the part's. */
export const withPart = (line: DraftLine, part: ShelfPart, rules: MoneyRules): DraftLine => ({
  ...line,
  kind: 'part',
  description: part.description,
  partId: part.id,
  partNumber: part.number,
  unit: part.unit,
  unitPrice: editableMoney(part.sellsAt, rules.currency, rules.locale),
  behind: {
    ...line.behind,
    unitCost: part.cost === 0 ? null : part.cost,
    priceFrom: part.sellsBy,
    workKind: '',
  },
});

/** Whether nothing has been typed into a line: such a one is not sent. */
export function isBlank(line: DraftLine, rules: MoneyRules): boolean {
  const price = line.unitPrice.trim();
  return (
    line.description.trim() === '' &&
    line.partId === null &&
    !isByRule(line.behind) &&
    (price === '' || price === beginsWith(line.kind, rules).unitPrice)
  );
}

/** Whether a price is still to be set; what goes by a rule gets its own. */
export const hasNoPrice = ({ unitPrice, behind }: DraftLine): boolean =>
  unitPrice.trim() === '' && !isByRule(behind);

/** Lines of an estimate as they stand in the cells. */
export const draftOf = (lines: readonly Line[], rules: MoneyRules): DraftLine[] =>
  lines.map((line, index) => ({
    key: index + 1,
    kind: line.kind,
    description: line.description,
    partId: line.partId,
    partNumber: line.partNumber,
    quantity: editableQuantity(line.quantity, rules.locale),
    unit: line.unit,
    unitPrice: editableMoney(line.unitPrice, rules.currency, rules.locale),
    behind: {
      unitCost: line.unitCost,
      priceFrom: line.priceFrom,
      workKind: line.workKind,
      note: line.note,
      discount: line.discount,
    },
  }));

type LineFigures = Pick<
  LineInput,
  'kind' | 'quantity' | 'unitPrice' | 'unitCost' | 'discount' | 'priceFrom'
>;

/** What a row says: the line to be sent when all of it can be read, and what is wrong where. */
export interface LineReading {
  line: LineInput | null;
  /** What the bill is worked out from; null until quantity and price can be read. */
  figures: LineFigures | null;
  /** Minor units; null until quantity and price can be read. */
  amount: number | null;
  /** What it leaves the shop; null until it is worked out. */
  margin: BillMargin | null;
  problems: Partial<Record<Cell, string>>;
}

/** Thousandths. */
const ONE = 1000;

/** Reads a row; never throws. */
export function readLine(draft: DraftLine, rules: MoneyRules): LineReading {
  const problems: LineReading['problems'] = {};
  const attempt = (cell: Cell, read: () => number): number | null => {
    try {
      return read();
    } catch (error) {
      problems[cell] = error instanceof RangeError ? error.message : 'This can’t be read.';
      return null;
    }
  };
  // By the shop's rule: what it comes to follows from the other lines.
  const byRule = isByRule(draft.behind);
  const quantity = byRule
    ? ONE
    : attempt('quantity', () => parseQuantity(draft.quantity, rules.locale));
  const unitPrice = byRule
    ? 0
    : attempt('unitPrice', () => parseMoney(draft.unitPrice, rules.currency, rules.locale));
  const amount =
    quantity === null || unitPrice === null
      ? null
      : attempt(
          'unitPrice',
          () =>
            lineFigures(
              { kind: draft.kind, quantity, unitPrice, discount: draft.behind.discount },
              rules.rounding,
            ).amount,
        );
  const checked = LineInput.safeParse({
    kind: draft.kind,
    description: draft.description,
    partId: draft.partId,
    quantity: quantity ?? 1,
    unit: draft.unit,
    unitPrice: unitPrice ?? 0,
    ...draft.behind,
  });
  for (const issue of checked.error?.issues ?? []) {
    const cell = CELLS.find((name) => name === issue.path[0]);
    if (cell !== undefined) problems[cell] ??= issue.message;
  }
  const sound = Object.keys(problems).length === 0 && checked.success;
  const { unitCost, discount, priceFrom } = draft.behind;
  return {
    line: sound ? checked.data : null,
    figures:
      amount === null || quantity === null || unitPrice === null
        ? null
        : { kind: draft.kind, quantity, unitPrice, unitCost, discount, priceFrom },
    amount,
    margin: null,
    problems,
  };
}
