import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import type {
  Account,
  BillAhead,
  BillTerms,
  Estimate,
  EstimateOption,
} from '../../../shared/contract/till/index.ts';
import { drawUp } from '../../../shared/money/index.ts';
import { workToBill } from '../../../shared/work/till/work-to-bill.ts';
import type { ApprovalWay } from '../../../shared/work/vocabulary.ts';
import type { SignatureValue } from '../../common/signature-field.tsx';
import { useDraft } from '../../common/use-draft.ts';

interface KeptApproval {
  how: ApprovalWay | null;
  approvedBy: string | null;
  /** Key of the option that the customer takes; null until somebody says. */
  option: string | null;
  /** Places of the lines that they don't take; null until somebody says: what they declined before. */
  declined: number[] | null;
  /** Null is a field that was emptied; it counts once `amountTyped` is true. */
  amount: number | null;
  amountTyped: boolean;
  note: string;
  signature: SignatureValue | null;
}

const UNTOUCHED: KeptApproval = {
  how: null,
  approvedBy: null,
  option: null,
  declined: null,
  amount: null,
  amountTyped: false,
  note: '',
  signature: null,
};

/** What an option comes to without the lines that were declined. */
export function totalWithout(
  { lines, discount, totals }: EstimateOption,
  declined: readonly number[],
  terms: BillTerms,
): number {
  if (declined.length === 0) return totals.total;
  const taken = lines.filter((_, place) => !declined.includes(place));
  return drawUp({ lines: taken, discount }, terms).totals.total;
}

/** Lines that the customer declined when they were asked last, by their words; all but never the whole of it. */
export function declinedBefore(
  lines: readonly { readonly description: string }[],
  approvals: readonly Pick<Account['approvals'][number], 'declined'>[],
): number[] {
  const words = new Set(approvals.at(-1)?.declined.map(({ description }) => description));
  const places = lines.flatMap(({ description }, place) => (words.has(description) ? [place] : []));
  return places.length < lines.length ? places : [];
}

/** Where the customer was asked before, the option that is expected to go on. */
const takenBefore = (account: Account): string | null =>
  account.approvals.length === 0 ? null : (workToBill(account)?.option.key ?? null);

/** An approval while it is taken: who, how, what and how much; what nobody typed follows job and estimate. */
export function useApprovalDraft(
  job: JobDossier,
  {
    account,
    estimate,
    ahead,
  }: { account: Account; estimate: Estimate; ahead: BillAhead | undefined },
  terms: BillTerms,
) {
  const { approvals } = account;
  const [kept, setKept, clear] = useDraft<KeptApproval>(`approval.${estimate.id}`, UNTOUCHED);
  const set = (change: Partial<KeptApproval>) => setKept((draft) => ({ ...draft, ...change }));
  const { options } = estimate;
  const option =
    options.length === 1
      ? options[0]
      : options.find(({ key }) => key === (kept.option ?? takenBefore(account)));
  const declined = kept.declined ?? declinedBefore(option?.lines ?? [], approvals);
  const total = option === undefined ? null : totalWithout(option, declined, terms);
  const again =
    approvals.at(-1)?.estimateId === estimate.id && approvals.at(-1)?.option === option?.key;
  const beyond = again && ahead !== undefined && ahead.beyond.length > 0 ? ahead.total : null;
  return {
    how: kept.how ?? job.reachBy,
    approvedBy: kept.approvedBy ?? job.customerName,
    option: option ?? null,
    declined,
    /** What the taken lines come to; null until an option is chosen. */
    total,
    /** With what came since the estimate, where this very option was approved before; else null. */
    ahead: beyond,
    amount: kept.amountTyped ? kept.amount : (beyond ?? total),
    note: kept.note,
    signature: kept.signature,
    setHow: (how: ApprovalWay) => set({ how }),
    setApprovedBy: (approvedBy: string) => set({ approvedBy }),
    setOption: (key: string) => set({ option: key, declined: null }),
    setDeclined: (declined: number[]) => set({ declined }),
    setAmount: (amount: number | null) => set({ amount, amountTyped: true }),
    setNote: (note: string) => set({ note }),
    setSignature: (signature: SignatureValue | null) => set({ signature }),
    clear,
  };
}
