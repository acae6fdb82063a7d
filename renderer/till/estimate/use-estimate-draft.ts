import { useCallback, useMemo } from 'react';
import type { Account, Estimate, LineInput, Totals } from '../../../shared/contract/till/index.ts';
import { billTotals } from '../../../shared/money/index.ts';
import { useShop } from '../../common/shop.tsx';
import { useDraft } from '../../common/use-draft.ts';
import {
  type DraftLine,
  draftOf,
  emptyLine,
  isBlank,
  type LineReading,
  readLine,
} from '../lines/draft-line.ts';
import { useMoneyRules } from '../lines/use-money-rules.ts';

interface KeptDraft {
  /** Id of the revision that stood there when typing began; null when there was none. */
  basedOn: string | null;
  /** Null until somebody types: the latest revision's own. */
  lines: DraftLine[] | null;
  note: string | null;
  validUntil: string | null;
  validUntilTyped: boolean;
}

const UNTOUCHED: KeptDraft = {
  basedOn: null,
  lines: null,
  note: null,
  validUntil: null,
  validUntilTyped: false,
};

/** The next revision while it is typed. */
export interface EstimateDraft {
  lines: DraftLine[];
  readings: LineReading[];
  note: string;
  validUntil: string | null;
  /** What would be sent; null while a line can't be read or there is none. */
  ready: LineInput[] | null;
  /** What the readable lines come to. */
  totals: Totals;
  /** Lines that the totals leave out, because quantity or price can't be read. */
  uncounted: number;
  /** Differs from the latest revision, or there is none and something is typed. */
  changed: boolean;
  /** Another revision was written while this one was typed. */
  overtaken: boolean;
  setLines: (change: (lines: readonly DraftLine[]) => DraftLine[]) => void;
  setNote: (note: string) => void;
  setValidUntil: (date: string | null) => void;
  /** Goes on from the latest revision, as it is. */
  startOver: () => void;
  /** Keeps what is typed although a newer revision is there. */
  keepTyped: () => void;
}

/** A line that nobody has filled in costs nothing and is not sent. */
const BLANK: LineReading = { line: null, amount: null, problems: {} };

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
const sameLines = (a: LineInput[] | null, b: LineInput[]): boolean =>
  JSON.stringify(a) === JSON.stringify(b);

/** The estimate being typed for a job: kept on this machine, priced as the shop rounds and taxes. */
export function useEstimateDraft(account: Account): EstimateDraft {
  const { taxes, rounding, taxBasis } = useShop();
  const rules = useMoneyRules();
  const latest = account.estimates.at(-1) ?? null;
  const latestId = latest?.id ?? null;
  const [kept, setKept, startOver] = useDraft<KeptDraft>(`till.${account.jobId}`, UNTOUCHED);
  const typing = kept.lines !== null || kept.note !== null || kept.validUntilTyped;

  const standing = useMemo(
    () => (latest === null ? [emptyLine([], 'labour', rules)] : draftOf(latest.lines, rules)),
    [latest, rules],
  );
  const lines = kept.lines ?? standing;
  const note = kept.note ?? latest?.note ?? '';
  const validUntil = kept.validUntilTyped ? kept.validUntil : (latest?.validUntil ?? null);

  const readings = useMemo(
    () => lines.map((line) => (isBlank(line, rules) ? BLANK : readLine(line, rules))),
    [lines, rules],
  );
  const sent = readings.filter((reading) => reading !== BLANK);
  const inputs = sent.flatMap(({ line }) => (line === null ? [] : [line]));
  const ready = inputs.length > 0 && inputs.length === sent.length ? inputs : null;

  const totals = useMemo(() => {
    const priced = readings.flatMap(({ amount }, index) => {
      const kind = lines[index]?.kind;
      return amount === null || kind === undefined ? [] : [{ kind, amount }];
    });
    return {
      ...billTotals(priced, taxes, { rounding, basis: taxBasis }),
      exemptBy: '',
    };
  }, [readings, lines, taxes, rounding, taxBasis]);

  const change = useCallback(
    (changed: (draft: KeptDraft) => Partial<KeptDraft>) =>
      setKept((draft) => {
        const untouched = draft.lines === null && draft.note === null && !draft.validUntilTyped;
        const basedOn = untouched ? latestId : draft.basedOn;
        return { ...draft, basedOn, ...changed(draft) };
      }),
    [setKept, latestId],
  );

  return {
    lines,
    readings,
    note,
    validUntil,
    ready,
    totals,
    uncounted: sent.filter(({ amount }) => amount === null).length,
    changed:
      latest === null
        ? sent.length > 0
        : !sameLines(ready, inputOf(latest)) ||
          note.trim() !== latest.note ||
          validUntil !== latest.validUntil,
    overtaken: typing && kept.basedOn !== latestId,
    setLines: useCallback(
      (edit) => change((draft) => ({ lines: edit(draft.lines ?? standing) })),
      [change, standing],
    ),
    setNote: (text) => change(() => ({ note: text })),
    setValidUntil: (date) => change(() => ({ validUntil: date, validUntilTyped: true })),
    startOver,
    keepTyped: () => change(() => ({ basedOn: latestId })),
  };
}
