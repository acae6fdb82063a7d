import type { JobDossier } from '../../../shared/contract/counter.ts';
import type { Estimate } from '../../../shared/contract/till/index.ts';
import type { ApprovalWay } from '../../../shared/work/vocabulary.ts';
import type { SignatureValue } from '../../common/signature-field.tsx';
import { useDraft } from '../../common/use-draft.ts';

interface KeptApproval {
  how: ApprovalWay | null;
  approvedBy: string | null;
  /** Null is a field that was emptied; it counts once `amountTyped` is true. */
  amount: number | null;
  amountTyped: boolean;
  signature: SignatureValue | null;
}

const UNTOUCHED: KeptApproval = {
  how: null,
  approvedBy: null,
  amount: null,
  amountTyped: false,
  signature: null,
};

/** An approval while it is taken: who, how, how much; what nobody typed follows job and estimate. */
export function useApprovalDraft(job: JobDossier, estimate: Estimate) {
  const [kept, setKept, clear] = useDraft<KeptApproval>(`approval.${estimate.id}`, UNTOUCHED);
  const set = (change: Partial<KeptApproval>) => setKept((draft) => ({ ...draft, ...change }));
  return {
    how: kept.how ?? job.reachBy,
    approvedBy: kept.approvedBy ?? job.customerName,
    amount: kept.amountTyped ? kept.amount : estimate.totals.total,
    signature: kept.signature,
    setHow: (how: ApprovalWay) => set({ how }),
    setApprovedBy: (approvedBy: string) => set({ approvedBy }),
    setAmount: (amount: number | null) => set({ amount, amountTyped: true }),
    setSignature: (signature: SignatureValue | null) => set({ signature }),
    clear,
  };
}
