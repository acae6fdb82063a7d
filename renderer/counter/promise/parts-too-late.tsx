import { Alert, Anchor } from '@mantine/core';
import { IconTruckDelivery } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { JobDossier } from '../../../shared/contract/counter.ts';
import { isOwed } from '../../../shared/work/job-state.ts';
import { comesTooLate } from '../../../shared/work/promise.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';

/** Says that the slowest missing part comes after the day promised; nothing while it doesn't. */
export function PartsTooLate({ job }: { job: JobDossier }) {
  const format = useFormat();
  const { data } = useQuery({
    ...deskQuery.parts.jobParts.queryOptions({ input: { jobId: job.id } }),
    enabled: isOwed(job.state),
  });
  const expectedOn = data?.expectedOn ?? null;
  if (!isOwed(job.state) || expectedOn === null) return null;
  if (!comesTooLate(expectedOn, job.promisedFor)) return null;
  return (
    <Alert
      role="status"
      variant="light"
      color="orange"
      icon={<IconTruckDelivery aria-hidden />}
      title="Parts come after the promised day"
    >
      The slowest is expected on {format.date(expectedOn)}.{' '}
      <Anchor inherit component={Link} to={`/job/${job.code}/parts`}>
        Parts of the job
      </Anchor>
    </Alert>
  );
}
