import { useSearchParams } from 'react-router';
import { JobCode } from '../../shared/contract/ids.ts';
import { FEATURES, type Feature } from '../../shared/work/features.ts';

/** What somebody came to the spec book for: from a job's bench, to add an engine or a specification. */
export interface BookErrand {
  /** The job to go back to; null for a visit without one. */
  readonly job: JobCode | null;
  readonly add: boolean;
  readonly feature: Feature | null;
  /** What the engine's plate says, to begin a new entry with. */
  readonly make: string;
  readonly model: string;
}

/** Reads the errand from the address. */
export function useErrand(): BookErrand {
  const [parameters] = useSearchParams();
  const job = JobCode.safeParse(parameters.get('for'));
  const feature = parameters.get('feature');
  return {
    job: job.success ? job.data : null,
    add: parameters.get('add') === '1',
    feature: FEATURES.find((each) => each === feature) ?? null,
    make: parameters.get('make') ?? '',
    model: parameters.get('model') ?? '',
  };
}

/** The address of a model's page, with the job to go back to. */
export const modelAddress = (id: string, job: JobCode | null): string =>
  job === null ? `/spec-book/${id}` : `/spec-book/${id}?for=${job}`;
