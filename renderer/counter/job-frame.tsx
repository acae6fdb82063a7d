import { useQuery } from '@tanstack/react-query';
import { Outlet, useParams } from 'react-router';
import { deskQuery } from '../common/desk.ts';
import { JobProvider } from '../common/job.tsx';
import { QueryView } from '../common/page.tsx';

/** The frame of a job's pages: who it is for, where it stands, and the way between its pages. */
export function JobFrame() {
  const { code = '' } = useParams();
  const query = useQuery(deskQuery.counter.job.queryOptions({ input: { code } }));
  return (
    <QueryView query={query}>
      {(job) => (
        <JobProvider job={job}>
          <Outlet />
        </JobProvider>
      )}
    </QueryView>
  );
}
