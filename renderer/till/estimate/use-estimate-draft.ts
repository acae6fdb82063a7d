import { useCallback, useMemo } from 'react';
import type {
  Account,
  BillTerms,
  Discount,
  Estimate,
  LineInput,
} from '../../../shared/contract/till/index.ts';
import { workToBill } from '../../../shared/work/till/work-to-bill.ts';
import { useToday } from '../../common/shop.tsx';
import { useDraft } from '../../common/use-draft.ts';
import type { DraftLine } from '../lines/draft-line.ts';
import { type DrawnDraft, drawDraft } from '../lines/draw-draft.ts';
import { useMoneyRules } from '../lines/use-money-rules.ts';
import {
  type DraftOption,
  isTyped,
  type KeptEstimate,
  standingOptions,
  UNTOUCHED,
  withOption,
  withoutOption,
} from './kept-estimate.ts';

/** An option and what its readable lines come to. */
export interface DrawnOption extends DraftOption {
  drawn: DrawnDraft;
}

/** What an estimate is written with: lines, or options by their names. */
type Written =
  | { lines: LineInput[]; discount: Discount | null }
  | { options: { label: string; lines: LineInput[]; discount: Discount | null }[] };

/** The next revision while it is typed. Lines, discount and figures are those of the option shown. */
export interface EstimateDraft extends DrawnDraft {
  options: DrawnOption[];
  /** Key of the option that is typed into. */
  shown: number;
  show: (key: number) => void;
  /** Another option beside the others, empty or beginning as the one that is shown; it is shown then. */
  addOption: (begins: 'empty' | 'as-shown') => void;
  nameOption: (key: number, label: string) => void;
  removeOption: (key: number) => void;
  lines: DraftLine[];
  /** Off the whole bill. */
  discount: Discount | null;
  note: string;
  validUntil: string | null;
  /** What would be written; null while something in any option is missing or can't be read. */
  written: Written | null;
  /** Differs from the latest revision, or there is none and something is typed. */
  changed: boolean;
  /** Another revision was written while this one was typed. */
  overtaken: boolean;
  setLines: (change: (lines: readonly DraftLine[]) => DraftLine[]) => void;
  setDiscount: (discount: Discount | null) => void;
  setNote: (note: string) => void;
  setValidUntil: (date: string | null) => void;
  /** Goes on from the latest revision, as it is. */
  startOver: () => void;
  /** Keeps what is typed although a newer revision is there. */
  keepTyped: () => void;
}

const inputOf = (lines: Estimate['lines']): LineInput[] =>
  lines.map((line) => ({
    kind: line.kind,
    description: line.description,
    partId: line.partId,
    quantity: line.quantity,
    unit: line.unit,
    unitPrice: line.unitPrice,
    unitCost: line.unitCost,
    priceFrom: line.priceFrom,
    workKind: line.workKind,
    note: line.note,
    discount: line.discount,
  }));

const asWritten = ({ options }: Estimate) =>
  options.map(({ label, lines, discount }) => ({ label, lines: inputOf(lines), discount }));

const asTyped = (options: readonly DrawnOption[]) =>
  options.map(({ label, drawn, discount }) => ({
    label: label.trim(),
    lines: drawn.ready,
    discount,
  }));

/** Equal when their fields are, which stand in the contract's order on both sides. */
const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

function writtenFrom(options: readonly DrawnOption[]): Written | null {
  const whole = options.flatMap(({ label, drawn: { ready: lines }, discount }) =>
    lines === null ? [] : [{ label: label.trim(), lines, discount }],
  );
  const [only] = whole;
  if (only === undefined || whole.length < options.length) return null;
  if (whole.length === 1) return { lines: only.lines, discount: only.discount };
  return whole.some(({ label }) => label === '') ? null : { options: whole };
}

/** A revision that nobody approved before its day was past holds no longer: the next begins anew. */
const hasRunOut = ({ approvals }: Account, latest: Estimate, today: string): boolean =>
  latest.validUntil !== null &&
  latest.validUntil < today &&
  approvals.at(-1)?.estimateId !== latest.id;

/** The estimate being typed for a job: kept on this machine, worked out on the customer's terms. */
export function useEstimateDraft(account: Account, terms: BillTerms): EstimateDraft {
  const rules = useMoneyRules();
  const today = useToday();
  const latest = account.estimates.at(-1) ?? null;
  const latestId = latest?.id ?? null;
  const [kept, setKept, startOver] = useDraft<KeptEstimate>(`till.${account.jobId}`, UNTOUCHED);
  const standing = useMemo(() => standingOptions(latest, rules), [latest, rules]);

  const options = useMemo(
    () =>
      (kept.options ?? standing).map((option) => ({
        ...option,
        drawn: drawDraft(option, rules, terms),
      })),
    [kept.options, standing, rules, terms],
  );
  const expected = workToBill(account)?.option.label;
  const shown =
    options.find(({ key }) => key === kept.shown) ??
    options.find(({ label }) => label === expected) ??
    options[0];
  if (shown === undefined) throw new Error('An estimate has at least one option.');

  const note = kept.note ?? latest?.note ?? '';
  const standingUntil =
    latest === null || hasRunOut(account, latest, today) ? terms.validUntil : latest.validUntil;
  const validUntil = kept.validUntilTyped ? kept.validUntil : standingUntil;

  const change = useCallback(
    (changed: (draft: KeptEstimate) => Partial<KeptEstimate>) =>
      setKept((draft) => {
        const basedOn = isTyped(draft) ? draft.basedOn : latestId;
        return { ...draft, basedOn, ...changed(draft) };
      }),
    [setKept, latestId],
  );
  const changeOption = useCallback(
    (key: number, edit: (option: DraftOption) => Partial<DraftOption>) =>
      change((draft) => ({
        options: (draft.options ?? standing).map((option) =>
          option.key === key ? { ...option, ...edit(option) } : option,
        ),
      })),
    [change, standing],
  );
  const { key } = shown;

  return {
    ...shown.drawn,
    options,
    shown: key,
    show: (next) => setKept((draft) => ({ ...draft, shown: next })),
    addOption: (begins) =>
      change((draft) => {
        const now = draft.options ?? standing;
        const [empty] = standingOptions(null, rules);
        const like = begins === 'empty' ? empty : now.find((option) => option.key === key);
        if (like === undefined) return {};
        const more = withOption(now, like);
        return { options: more, shown: more.at(-1)?.key ?? null };
      }),
    nameOption: (named, label) => changeOption(named, () => ({ label })),
    removeOption: (removed) =>
      change((draft) => ({
        options: withoutOption(draft.options ?? standing, removed),
        shown: null,
      })),
    lines: shown.lines,
    discount: shown.discount,
    note,
    validUntil,
    written: writtenFrom(options),
    changed:
      latest === null
        ? options.some(({ drawn }) => drawn.filled > 0)
        : !same(asTyped(options), asWritten(latest)) ||
          note.trim() !== latest.note ||
          validUntil !== latest.validUntil,
    overtaken: isTyped(kept) && kept.basedOn !== latestId,
    setLines: useCallback(
      (edit) => changeOption(key, ({ lines }) => ({ lines: edit(lines) })),
      [changeOption, key],
    ),
    setDiscount: (discount) => changeOption(key, () => ({ discount })),
    setNote: (text) => change(() => ({ note: text })),
    setValidUntil: (date) => change(() => ({ validUntil: date, validUntilTyped: true })),
    startOver,
    keepTyped: () => change(() => ({ basedOn: latestId })),
  };
}
