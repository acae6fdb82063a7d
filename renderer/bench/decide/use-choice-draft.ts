import type { Decision, PartToDecide } from '../../../shared/contract/bench/index.ts';
import type { JobId } from '../../../shared/contract/ids.ts';
import {
  isMachined,
  takesStep,
  whyReasonIsWanted,
} from '../../../shared/work/bench/deciding/decision-rules.ts';
import { useDraft } from '../../common/use-draft.ts';

interface KeptChoice {
  choice: Decision['choice'] | null;
  /** Null until somebody chooses another than the advised one. */
  step: number | null;
  /** Null until somebody types another size than the usual one, mm. */
  machineTo: { low: number | string; high: number | string } | null;
  reason: string;
}

const UNTOUCHED: KeptChoice = { choice: null, step: null, machineTo: null, reason: '' };

/** A choice while it is made, kept on this machine until it is decided. */
export function useChoiceDraft(jobId: JobId, part: PartToDecide) {
  const [draft, setDraft, clear] = useDraft<KeptChoice>(
    `decide.${jobId}.${part.subject}.${part.cylinder}`,
    UNTOUCHED,
  );
  const { choice } = draft;
  const stepped = choice !== null && takesStep(choice);
  const advisedStep = part.advice.choice === choice ? part.advice.step : null;
  const step = stepped ? (draft.step ?? advisedStep) : null;
  const usual = part.steps.find((each) => each.step === step)?.machineTo ?? null;
  const machined = choice !== null && isMachined(part.subject, choice) && step !== null;
  const typed = draft.machineTo;
  const sized =
    machined && typed !== null && typeof typed.low === 'number' && typeof typed.high === 'number'
      ? { low: typed.low, high: typed.high }
      : null;
  return {
    choice,
    stepped,
    step,
    /** What stands in the two fields of the size; null where nothing is machined to one. */
    size: machined ? (typed ?? usual ?? { low: '', high: '' }) : null,
    /** What is sent: null leaves the usual size. */
    machineTo: sized,
    reason: draft.reason,
    why: choice === null ? null : whyReasonIsWanted({ choice, step }, part.advice),
    choose: (next: Decision['choice']) =>
      setDraft((before) => ({ ...before, choice: next, step: null, machineTo: null })),
    setStep: (next: number) => setDraft((before) => ({ ...before, step: next, machineTo: null })),
    setSize: (next: NonNullable<KeptChoice['machineTo']>) =>
      setDraft((before) => ({ ...before, machineTo: next })),
    setReason: (next: string) => setDraft((before) => ({ ...before, reason: next })),
    clear,
  };
}
