import { Alert, Anchor, Text } from '@mantine/core';
import { IconTruckDelivery } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import { isOwed } from '../../../shared/work/counter/job-state.ts';
import { comesTooLate } from '../../../shared/work/counter/promise.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';

/** The day of the slowest missing part, and whether it keeps to the promise; nothing while none is known. */
export function PartsExpected({ job }: { job: JobDossier }) {
  const format = useFormat();
  const owed = isOwed(job.state);
  const { data } = useQuery({
    ...deskQuery.parts.jobParts.queryOptions({ input: { jobId: job.id } }),
    enabled: owed,
  });
  const expectedOn = data?.expectedOn ?? null;
  if (!owed || expectedOn === null) return null;
  const words = (
    <>
      The slowest part is expected on {format.date(expectedOn)}.{' '}
      <Anchor inherit component={Link} to={`/job/${job.code}/parts`}>
        Parts of the job
      </Anchor>
    </>
  );
  if (!comesTooLate(expectedOn, job.promisedFor)) return <Text size="sm">{words}</Text>;
  return (
    <Alert
      role="status"
      variant="light"
      color="orange"
      icon={<IconTruckDelivery aria-hidden />}
      title="Parts come after the promised day"
    >
      {words}
    </Alert>
  );
}
