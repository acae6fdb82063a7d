import { Anchor, Group, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { JobWithBilledParts } from '../../../shared/contract/parts/index.ts';
import { StateBadge } from '../../common/badges.tsx';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { QueryView } from '../../common/page.tsx';
import classes from './billed-parts.module.css';
import { BilledPartsList } from './billed-parts-list.tsx';

/** Every job that was billed for parts which have not left the shelf; nothing while there is none. */
export function BilledCard() {
  const query = useQuery(deskQuery.parts.billedNotIssued.queryOptions({ input: {} }));
  return (
    <QueryView query={query}>
      {(jobs) =>
        jobs.length > 0 && (
          <Card title="Billed, not issued">
            <Text size="sm" c="dimmed">
              These parts are on an invoice and were not issued. Issue them, or say where they came
              from.
            </Text>
            <ul className={classes.jobs}>
              {jobs.map((job) => (
                <BilledJob key={job.jobId} job={job} />
              ))}
            </ul>
          </Card>
        )
      }
    </QueryView>
  );
}

function BilledJob({ job }: { job: JobWithBilledParts }) {
  return (
    <li className={classes.job}>
      <Group gap="sm" mb={4}>
        <Anchor component={Link} fw={600} to={`/job/${job.jobCode}/parts`}>
          {job.jobCode}
        </Anchor>
        <Text span>
          <bdi>{job.customerName}</bdi>, {job.machine}
        </Text>
        <StateBadge state={job.state} />
      </Group>
      {job.passedOver !== '' && (
        <Text size="sm" mb={4}>
          Handed over with it: {job.passedOver}
        </Text>
      )}
      <BilledPartsList jobId={job.jobId} parts={job.parts} />
    </li>
  );
}
