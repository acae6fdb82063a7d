import { createContext, type ReactNode, useContext } from 'react';
import type { JobDossier } from '../../shared/contract/counter/index.ts';

const JobContext = createContext<JobDossier | null>(null);

/** The job whose pages are open; the job frame provides it. */
export function JobProvider({ job, children }: { job: JobDossier; children: ReactNode }) {
  return <JobContext value={job}>{children}</JobContext>;
}

/** The job of the page, or null outside a job's pages. */
export function useJobIfAny(): JobDossier | null {
  return useContext(JobContext);
}

/** The job of the page: overview, bench, till and handover are shown only once it is known. */
export function useJob(): JobDossier {
  const job = useContext(JobContext);
  if (job === null) throw new Error('useJob is called outside a job’s pages.');
  return job;
}
