import type { Account, Discount, EstimateOption } from '../../../shared/contract/till/index.ts';
import { type DraftLine, draftOf, emptyLine, type MoneyRules } from '../lines/draft-line.ts';

/** One way to do it while it is typed. */
export interface DraftOption {
  /** Tells the options apart; never sent. */
  key: number;
  /** Empty while it is the only one. */
  label: string;
  lines: DraftLine[];
  /** Off the whole of it. */
  discount: Discount | null;
}

/** An estimate while it is typed, as it is kept on this machine. */
export interface KeptEstimate {
  /** Id of the revision that stood there when typing began; null when there was none. */
  basedOn: string | null;
  /** Null until somebody types: the latest revision's own. */
  options: DraftOption[] | null;
  /** Key of the option that is typed into; null for the one that is expected to be done. */
  shown: number | null;
  note: string | null;
  validUntil: string | null;
  validUntilTyped: boolean;
}

export const UNTOUCHED: KeptEstimate = {
  basedOn: null,
  options: null,
  shown: null,
  note: null,
  validUntil: null,
  validUntilTyped: false,
};

export const isTyped = ({ options, note, validUntilTyped }: KeptEstimate): boolean =>
  options !== null || note !== null || validUntilTyped;

/** The options of the latest revision as they stand in the cells; without one, an empty line. */
export const standingOptions = (
  latest: Account['estimates'][number] | null,
  rules: MoneyRules,
): DraftOption[] =>
  latest === null
    ? [{ key: 1, label: '', lines: [emptyLine([], 'labour', rules)], discount: null }]
    : latest.options.map(({ label, lines, discount }: EstimateOption, index) => ({
        key: index + 1,
        label,
        lines: draftOf(lines, rules),
        discount,
      }));

/** What a choice is usually between; the first that nobody has used yet names the next option. */
const USUAL_NAMES = ['Repair', 'Rebuild', 'Replace the engine'];

const unusedName = (options: readonly DraftOption[]): string =>
  USUAL_NAMES.find((name) => options.every(({ label }) => label !== name)) ?? '';

/** One more option after the others; the one that stood alone gets a name now. */
export function withOption(
  options: readonly DraftOption[],
  { lines, discount }: Pick<DraftOption, 'lines' | 'discount'>,
): DraftOption[] {
  const named = options.map((option) =>
    option.label === '' ? { ...option, label: unusedName(options) } : option,
  );
  const key = Math.max(0, ...named.map((option) => option.key)) + 1;
  return [...named, { key, label: unusedName(named), lines, discount }];
}

/** The others; one that is left alone needs no name. */
export function withoutOption(options: readonly DraftOption[], key: number): DraftOption[] {
  const left = options.filter((option) => option.key !== key);
  return left.length === 1 ? left.map((option) => ({ ...option, label: '' })) : left;
}
