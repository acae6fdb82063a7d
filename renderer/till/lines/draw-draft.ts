import type {
  BillTerms,
  Discount,
  LineInput,
  Totals,
} from '../../../shared/contract/till/index.ts';
import { type BillMargin, billMargin, drawUp } from '../../../shared/money/index.ts';
import {
  type DraftLine,
  hasNoPrice,
  isBlank,
  type LineReading,
  type MoneyRules,
  readLine,
} from './draft-line.ts';

/** Lines as they are typed, worked out as far as they can be read. */
export interface DrawnDraft {
  readings: LineReading[];
  /** What would be sent; null while a line can't be read or there is none. */
  ready: LineInput[] | null;
  /** What the readable lines come to. */
  totals: Totals;
  /** Lines that the totals leave out, because nobody has typed a price yet. */
  unpriced: number;
  /** Lines that they leave out because quantity or price can't be read. */
  uncounted: number;
  /** What is typed into, empty lines left out. */
  filled: number;
  margin: BillMargin;
}

/** A line that nobody has filled in costs nothing and is not sent. */
const BLANK: LineReading = { line: null, figures: null, amount: null, margin: null, problems: {} };

/** Reads the lines and works them out on the customer's terms, as the desk will when they are sent. */
export function drawDraft(
  { lines, discount }: { lines: readonly DraftLine[]; discount: Discount | null },
  rules: MoneyRules,
  terms: BillTerms,
): DrawnDraft {
  const readings = lines.map((line) => (isBlank(line, rules) ? BLANK : readLine(line, rules)));
  const filled = readings.filter((reading) => reading !== BLANK);
  const unpriced = lines.filter((line) => !isBlank(line, rules) && hasNoPrice(line)).length;
  const counted = filled.flatMap(({ figures }) => (figures === null ? [] : [figures]));
  const drawn = attempt(() => drawUp({ lines: counted, discount }, terms));
  if (drawn === null) return drawDraft({ lines: [], discount: null }, rules, terms);
  const workedOut = new Map(counted.map((figures, index) => [figures, drawn.lines[index]]));
  const settled = readings.map((reading) => {
    const worked = reading.figures === null ? undefined : workedOut.get(reading.figures);
    if (worked === undefined) return reading;
    const { unitPrice, amount } = worked;
    const margin = billMargin({ lines: [worked], discount: null }, terms);
    return { ...reading, amount, margin, line: reading.line && { ...reading.line, unitPrice } };
  });
  const inputs = settled.flatMap(({ line }) => (line === null ? [] : [line]));
  return {
    readings: settled,
    ready: inputs.length > 0 && inputs.length === filled.length ? inputs : null,
    totals: drawn.totals,
    unpriced,
    uncounted: filled.length - counted.length - unpriced,
    filled: filled.length,
    margin: billMargin({ lines: drawn.lines, discount }, terms),
  };
}

/** A bill beyond all that money here can hold has no figures; the desk refuses it with its reason. */
function attempt<T>(work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
