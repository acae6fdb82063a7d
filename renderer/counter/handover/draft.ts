import {
  type HandoverMatter,
  PASSABLE_MATTERS,
  type PassableMatter,
} from '../../../shared/work/counter/handover-matters.ts';
import type { SignatureValue } from '../../common/signature-field.tsx';

/** The handover as it stands on the page; kept when the window is closed. */
export interface HandoverDraft {
  workDone: string;
  oldParts: string;
  nextServiceOn: string | null;
  owingReason: string;
  /** Why it goes out with what is not settled. */
  reasons: Partial<Record<PassableMatter, string>>;
  customerSignature: SignatureValue | null;
  shopSignature: SignatureValue | null;
}

/** What a fault is at: a field, a matter that wants a reason, or one that has to be settled first. */
export type HandoverFault = Exclude<keyof HandoverDraft, 'reasons'> | HandoverMatter['key'];
export type HandoverFaults = Partial<Record<HandoverFault, string>>;

export const emptyHandover: HandoverDraft = {
  workDone: '',
  oldParts: '',
  nextServiceOn: null,
  owingReason: '',
  reasons: {},
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

/** The reasons that are written for what is still open. */
export const reasonsFor = (
  { reasons }: HandoverDraft,
  matters: readonly HandoverMatter[],
): { matter: PassableMatter; reason: string }[] =>
  PASSABLE_MATTERS.flatMap((matter) => {
    const reason = reasons[matter]?.trim() ?? '';
    const open = matters.some(({ key, standing }) => key === matter && standing === 'to-explain');
    return open && reason !== '' ? [{ matter, reason }] : [];
  });

/** A reason is a sentence, as the desk wants it. */
const SHORTEST_REASON = 10;

/** What has to be there before the desk is asked at all: all of it at once, in the page's order. */
export function stillWanted(
  draft: HandoverDraft,
  matters: readonly HandoverMatter[],
  due: number,
): HandoverFaults {
  const faults: HandoverFaults = {};
  const written = new Map(reasonsFor(draft, matters).map(({ matter, reason }) => [matter, reason]));
  for (const { key, standing, says } of matters) {
    if (standing === 'to-settle' && key !== 'due') faults[key] = says;
    if (
      standing === 'to-explain' &&
      (written.get(key as PassableMatter)?.length ?? 0) < SHORTEST_REASON
    )
      faults[key] = 'Settle it, or say in a sentence why it goes out with it.';
  }
  if (draft.workDone.trim() === '') faults.workDone = 'Say what was done, in a few sentences.';
  if (due > 0 && draft.owingReason.trim() === '')
    faults.owingReason = 'Say why the machine goes out owing, or take the payment first.';
  if (draft.customerSignature === null)
    faults.customerSignature = 'Let the customer sign, or record a typed signature.';
  if (draft.shopSignature === null)
    faults.shopSignature = 'Sign for the shop, or record a typed signature.';
  return faults;
}
