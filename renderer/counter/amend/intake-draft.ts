import type { IntakeFacts } from '../../../shared/work/counter/intake-facts.ts';
import { SYMPTOM_LABELS } from '../../../shared/work/vocabulary.ts';
import { decimal } from '../../common/measure/decimal.ts';
import type { SignatureValue } from '../../common/signature-field.tsx';
import type { TakeInDraft } from '../take-in/draft.ts';
import { pieces, readSymptoms } from '../take-in/symptom-words.ts';
import { withOtherWords } from '../take-in/take-in-call.ts';

/** What intake wrote down, as the fields of intake show it, and why it is mended. */
export type IntakeDraft = Pick<
  TakeInDraft,
  | 'complaint'
  | 'symptoms'
  | 'condition'
  | 'leftWith'
  | 'fuel'
  | 'lastService'
  | 'engineHours'
  | 'reachBy'
> & { reason: string; signature: SignatureValue | null };

export const draftOf = (job: IntakeFacts): IntakeDraft => ({
  complaint: job.complaint,
  symptoms: job.symptoms.map((symptom) => SYMPTOM_LABELS[symptom]).join(', '),
  condition: job.condition,
  leftWith: job.leftWith.join(', '),
  fuel: job.fuel,
  lastService: job.lastService,
  engineHours: job.engineHours === null ? '' : String(job.engineHours),
  reachBy: job.reachBy,
  reason: '',
  signature: null,
});

/** The facts that a draft says; null for running hours that can't be read. */
export function factsOf(draft: IntakeDraft): IntakeFacts | null {
  const { symptoms, otherWords } = readSymptoms(draft.symptoms);
  const hours = draft.engineHours.trim();
  const engineHours = hours === '' ? null : decimal(hours);
  if (hours !== '' && engineHours === null) return null;
  return {
    complaint: draft.complaint,
    symptoms,
    condition: withOtherWords(draft.condition, otherWords),
    leftWith: pieces(draft.leftWith),
    fuel: draft.fuel,
    lastService: draft.lastService,
    engineHours,
    reachBy: draft.reachBy,
  };
}
