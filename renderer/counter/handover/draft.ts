import type { SignatureValue } from '../../common/signature-field.tsx';

/** The handover as it stands on the page; kept when the window is closed. */
export interface HandoverDraft {
  workDone: string;
  oldParts: string;
  nextServiceOn: string | null;
  owingReason: string;
  customerSignature: SignatureValue | null;
  shopSignature: SignatureValue | null;
}

export type HandoverFaults = Partial<Record<keyof HandoverDraft, string>>;

export const emptyHandover: HandoverDraft = {
  workDone: '',
  oldParts: '',
  nextServiceOn: null,
  owingReason: '',
  customerSignature: null,
  shopSignature: null,
};

const SIGNATURES = ['customerSignature', 'shopSignature'];

/** Changes the draft; what was signed lapses when the text above the signatures changes. */
export function changed(draft: HandoverDraft, part: Partial<HandoverDraft>): HandoverDraft {
  const onlySigned = Object.keys(part).every((key) => SIGNATURES.includes(key));
  return onlySigned
    ? { ...draft, ...part }
    : { ...draft, customerSignature: null, shopSignature: null, ...part };
}

/** What has to be there before the desk is asked at all. */
export function stillWanted(draft: HandoverDraft, due: number): HandoverFaults {
  const faults: HandoverFaults = {};
  if (draft.workDone.trim() === '') faults.workDone = 'Say what was done, in a few sentences.';
  if (due > 0 && draft.owingReason.trim() === '')
    faults.owingReason = 'Say why the machine goes out owing, or take the payment first.';
  if (draft.customerSignature === null)
    faults.customerSignature = 'Let the customer sign, or confirm the typed name.';
  if (draft.shopSignature === null)
    faults.shopSignature = 'Sign for the shop, or confirm the typed name.';
  return faults;
}
