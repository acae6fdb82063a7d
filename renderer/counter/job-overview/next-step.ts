import type { JobDossier } from '../../../shared/contract/counter/index.ts';

export interface NextStep {
  /** What has to happen, in a sentence. */
  says: string;
  label: string;
  /** Below the job’s own address. */
  page: 'bench' | 'bench/diagnose' | 'till' | 'handover';
}

/**
 * What the job wants next, and where that is done.
 * @param openPoints hold points of the build that are open; null while that is not known
 */
export function nextStep(
  job: Pick<JobDossier, 'state' | 'stateNote'>,
  openPoints: number | null,
): NextStep {
  const noted = job.stateNote === '' ? '' : ` ${job.stateNote}`;
  switch (job.state) {
    case 'taken-in':
    case 'diagnosis':
      return {
        says: 'The bench finds out what is wrong, check by check; what it takes goes to the estimate.',
        label: 'Diagnose',
        page: 'bench/diagnose',
      };
    case 'customer-to-decide':
      return {
        says: 'The customer decides: call, and note the answer with the estimate.',
        label: 'Estimate and approval',
        page: 'till',
      };
    case 'go-ahead':
      return {
        says: 'The customer gave the go-ahead: it can go on the bench.',
        label: 'Go to the bench',
        page: 'bench',
      };
    case 'waits-for-parts':
      return {
        says: `It waits for parts.${noted}`,
        label: 'Go to the bench',
        page: 'bench',
      };
    case 'on-the-bench':
      if (openPoints === 0)
        return {
          says: 'Every hold point is passed: mark it ready, bill it, and hand it over.',
          label: 'To the handover',
          page: 'handover',
        };
      return {
        says: 'Measure, build, and pass the hold points; then it is ready.',
        label: 'Measure and pass hold points',
        page: 'bench',
      };
    case 'ready':
      return {
        says: 'It is ready: bill it, take the payment, and hand it over.',
        label: 'Hand over',
        page: 'handover',
      };
    case 'stopped':
      return {
        says: `The job was stopped.${noted} Bill what is owed and hand the machine back, or take it up again.`,
        label: 'Hand over',
        page: 'handover',
      };
    case 'handed-over':
      return {
        says: 'The machine went home; the record is closed and the signed work order is kept.',
        label: 'Signed work order',
        page: 'handover',
      };
  }
}
