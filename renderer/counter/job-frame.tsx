import { useQuery } from '@tanstack/react-query';
import { Outlet, useParams } from 'react-router';
import { JobCode } from '../../shared/contract/ids.ts';
import { deskQuery } from '../common/desk.ts';
import { JobProvider } from '../common/job.tsx';
import { Page, QueryView } from '../common/page.tsx';
import { refusalOf } from '../common/refusal.tsx';
import { JobHeader } from './job-header.tsx';
import { NoSuchJob } from './no-such-job.tsx';

/** The frame of a job's pages: who it is for, where it stands, and the way between its pages. */
export function JobFrame() {
  const { code = '' } = useParams();
  const known = JobCode.safeParse(code.toUpperCase());
  // Another tag was scanned: its pages start afresh, with nothing of the job before.
  return known.success ? (
    <KnownJob key={known.data} code={known.data} />
  ) : (
    <NoSuchJob code={code} />
  );
}

function KnownJob({ code }: { code: JobCode }) {
  const query = useQuery(deskQuery.counter.job.queryOptions({ input: { code } }));
  if (query.error !== null && refusalOf(query.error).code === 'NOT_FOUND')
    return <NoSuchJob code={code} />;
  if (query.data === undefined)
    return (
      <Page title={`Job ${code}`}>
        <QueryView query={query}>{() => null}</QueryView>
      </Page>
    );
  return (
    <JobProvider job={query.data}>
      <JobHeader job={query.data} />
      <Outlet />
    </JobProvider>
  );
}
