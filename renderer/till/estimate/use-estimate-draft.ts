import { useCallback, useMemo } from 'react';
import type {
  Account,
  BillTerms,
  Discount,
  Estimate,
  LineInput,
} from '../../../shared/contract/till/index.ts';
import { useDraft } from '../../common/use-draft.ts';
import { type DraftLine, draftOf, emptyLine } from '../lines/draft-line.ts';
import { type DrawnDraft, drawDraft } from '../lines/draw-draft.ts';
import { useMoneyRules } from '../lines/use-money-rules.ts';

interface KeptDraft {
  /** Id of the revision that stood there when typing began; null when there was none. */
  basedOn: string | null;
  /** Null until somebody types: the latest revision's own. */
  lines: DraftLine[] | null;
  discount: Discount | null;
  discountTyped: boolean;
  note: string | null;
  validUntil: string | null;
  validUntilTyped: boolean;
}

const UNTOUCHED: KeptDraft = {
  basedOn: null,
  lines: null,
  discount: null,
  discountTyped: false,
  note: null,
  validUntil: null,
  validUntilTyped: false,
};

/** The next revision while it is typed. */
export interface EstimateDraft extends DrawnDraft {
  lines: DraftLine[];
  /** Off the whole bill. */
  discount: Discount | null;
  note: string;
  validUntil: string | null;
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

const inputOf = (estimate: Estimate): LineInput[] =>
  estimate.lines.map((line) => ({
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

/** Equal when their fields are, which stand in the contract's order on both sides. */
const same = (a: LineInput[] | Discount | null, b: LineInput[] | Discount | null): boolean =>
  JSON.stringify(a) === JSON.stringify(b);

const isTyped = (draft: KeptDraft): boolean =>
  draft.lines !== null || draft.discountTyped || draft.note !== null || draft.validUntilTyped;

/** The estimate being typed for a job: kept on this machine, worked out on the customer's terms. */
export function useEstimateDraft(account: Account, terms: BillTerms): EstimateDraft {
  const rules = useMoneyRules();
  const latest = account.estimates.at(-1) ?? null;
  const latestId = latest?.id ?? null;
  const [kept, setKept, startOver] = useDraft<KeptDraft>(`till.${account.jobId}`, UNTOUCHED);
  const typing = isTyped(kept);

  const standing = useMemo(
    () => (latest === null ? [emptyLine([], 'labour', rules)] : draftOf(latest.lines, rules)),
    [latest, rules],
  );
  const lines = kept.lines ?? standing;
  const standingDiscount = latest?.options[0]?.discount ?? null;
  const discount = kept.discountTyped ? kept.discount : standingDiscount;
  const note = kept.note ?? latest?.note ?? '';
  const validUntil = kept.validUntilTyped ? kept.validUntil : (latest?.validUntil ?? null);

  const drawn = useMemo(
    () => drawDraft({ lines, discount }, rules, terms),
    [lines, discount, rules, terms],
  );

  const change = useCallback(
    (changed: (draft: KeptDraft) => Partial<KeptDraft>) =>
      setKept((draft) => {
        const basedOn = isTyped(draft) ? draft.basedOn : latestId;
        return { ...draft, basedOn, ...changed(draft) };
      }),
    [setKept, latestId],
  );

  return {
    ...drawn,
    lines,
    discount,
    note,
    validUntil,
    changed:
      latest === null
        ? drawn.filled > 0
        : !same(drawn.ready, inputOf(latest)) ||
          !same(discount, standingDiscount) ||
          note.trim() !== latest.note ||
          validUntil !== latest.validUntil,
    overtaken: typing && kept.basedOn !== latestId,
    setLines: useCallback(
      (edit) => change((draft) => ({ lines: edit(draft.lines ?? standing) })),
      [change, standing],
    ),
    setDiscount: (off) => change(() => ({ discount: off, discountTyped: true })),
    setNote: (text) => change(() => ({ note: text })),
    setValidUntil: (date) => change(() => ({ validUntil: date, validUntilTyped: true })),
    startOver,
    keepTyped: () => change(() => ({ basedOn: latestId })),
  };
}
