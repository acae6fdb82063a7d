import { Badge, Stack, Table, Text } from '@mantine/core';
import { IconCircleCheck, IconHourglass, IconPackageExport } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { JobPartsCard } from '../../shared/contract/parts/index.ts';
import { StateBadge } from '../common/badges.tsx';
import { deskQuery } from '../common/desk.ts';
import { useFormat } from '../common/format.ts';
import { Empty, Page, QueryView } from '../common/page.tsx';
import { Sheet } from '../common/sheet.tsx';
import { BilledCard } from './billed/billed-card.tsx';
import classes from './parts-table.module.css';

/** Jobs that need parts: what can go on, what waits and for what, what lies ready. */
export function JobsAndPartsPage() {
  const query = useQuery(deskQuery.parts.jobsAndParts.queryOptions({ input: {} }));
  return (
    <Page
      title="Jobs and their parts"
      description="Jobs that wait though everything is there come first, then by the day on which the slowest part is expected."
    >
      <Stack gap="md">
        <BilledCard />
        <QueryView query={query}>
          {(jobs) =>
            jobs.length === 0 ? (
              <Empty
                title="No job waits for the stores"
                hint="Jobs whose approved parts are missing, or lie ready to be issued, are listed here."
              />
            ) : (
              <Sheet>
                <Table className={classes.parts}>
                  <Table.Thead>
                    <Table.Tr>
                      <Table.Th>Job</Table.Th>
                      <Table.Th>For</Table.Th>
                      <Table.Th>State</Table.Th>
                      <Table.Th>Parts</Table.Th>
                      <Table.Th>Expected</Table.Th>
                    </Table.Tr>
                  </Table.Thead>
                  <Table.Tbody>
                    {jobs.map((job) => (
                      <JobRow key={job.jobId} job={job} />
                    ))}
                  </Table.Tbody>
                </Table>
              </Sheet>
            )
          }
        </QueryView>
      </Stack>
    </Page>
  );
}

function JobRow({ job }: { job: JobPartsCard }) {
  const { date } = useFormat();
  const { missing, expectedOn } = job;
  return (
    <Table.Tr className={classes.row}>
      <Table.Td className={classes.number}>
        <Link to={`/job/${job.jobCode}/parts`} className={classes.link} data-row>
          {job.jobCode}
        </Link>
      </Table.Td>
      <Table.Td>
        <bdi>{job.customerName}</bdi>
        <Text size="xs" c="dimmed">
          {job.machine}
        </Text>
      </Table.Td>
      <Table.Td>
        <StateBadge state={job.state} />
      </Table.Td>
      <Table.Td>
        <Parts job={job} />
      </Table.Td>
      <Table.Td>
        {missing.length === 0 ? '–' : expectedOn === null ? 'no day yet' : date(expectedOn)}
      </Table.Td>
    </Table.Tr>
  );
}

function Parts({ job: { missing, toIssue, state } }: { job: JobPartsCard }) {
  if (missing.length > 0)
    return (
      <>
        <Badge variant="light" color="orange" leftSection={<IconHourglass size={15} aria-hidden />}>
          {missing.length === 1 ? 'One missing' : `${missing.length} missing`}
        </Badge>
        <Text size="sm">{missing.join('; ')}</Text>
      </>
    );
  return state === 'waits-for-parts' ? (
    <Badge variant="light" color="green" leftSection={<IconCircleCheck size={15} aria-hidden />}>
      All there: on with it
    </Badge>
  ) : (
    <Badge variant="light" color="blue" leftSection={<IconPackageExport size={15} aria-hidden />}>
      {toIssue === 1 ? 'One to issue' : `${toIssue} to issue`}
    </Badge>
  );
}
