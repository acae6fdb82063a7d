import { Alert, Anchor, Button, Group, Stack, Text } from '@mantine/core';
import { IconCircleCheck, IconHourglass } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { JobParts } from '../../../shared/contract/parts/index.ts';
import { JOB_STATE_LABELS } from '../../../shared/work/counter/job-state.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { useJob } from '../../common/job.tsx';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { BilledPartsList } from '../billed/billed-parts-list.tsx';
import { IssueForm } from './issue-form.tsx';
import { JobPartsTable } from './job-parts-table.tsx';

/** What a job needs from the stores and what it has of it; parts are issued here by scanning. */
export function JobPartsPage() {
  const { id: jobId, state } = useJob();
  const query = useQuery(deskQuery.parts.jobParts.queryOptions({ input: { jobId } }));
  const money = useMoney();
  return (
    <Page title="Parts of the job">
      <QueryView query={query}>
        {(job) => (
          <Stack gap="md">
            <WhereItStands job={job} />
            {job.notIssued.length > 0 && (
              <Card title="Billed, not issued">
                <BilledPartsList jobId={jobId} parts={job.notIssued} />
              </Card>
            )}
            {state !== 'handed-over' && (
              <Card title="Issue to this job">
                <IssueForm job={job} />
              </Card>
            )}
            <Card
              title="Needed and issued"
              flush={job.parts.length > 0}
              aside={
                job.cost > 0 && (
                  <Text size="sm" c="dimmed">
                    Cost the shop so far: {money(job.cost)}
                  </Text>
                )
              }
            >
              {job.parts.length === 0 ? (
                <Empty
                  title={job.billed ? 'No parts are billed' : 'This job needs no parts yet'}
                  hint="Once the customer approves an estimate with parts on it, they are promised here as far as the shelf holds them."
                  action={
                    <Anchor component={Link} to={`/job/${job.jobCode}/till`}>
                      To the estimate
                    </Anchor>
                  }
                />
              ) : (
                <JobPartsTable job={job} />
              )}
            </Card>
          </Stack>
        )}
      </QueryView>
    </Page>
  );
}

/** Whether something is missing, by when it should be there, and where the job may go because of it. */
function WhereItStands({ job }: { job: JobParts }) {
  const by = useBy();
  const { date } = useFormat();
  const move = useWrite(deskQuery.parts.moveByParts.mutationOptions());
  const { mayMoveTo, missing, expectedOn } = job;
  if (missing === 0 && mayMoveTo === null) return null;
  const day = expectedOn === null ? null : date(expectedOn);
  return (
    <>
      <Alert
        role="status"
        variant="light"
        color={missing > 0 ? 'orange' : 'green'}
        icon={missing > 0 ? <IconHourglass aria-hidden /> : <IconCircleCheck aria-hidden />}
        title={missing > 0 ? missingWords(missing, day) : 'The last part is there'}
      >
        <Group justify="space-between" gap="sm">
          <Text size="sm">{nextWords(job)}</Text>
          {mayMoveTo !== null && (
            <Button
              variant="filled"
              color={missing > 0 ? 'orange.9' : 'green.9'}
              loading={move.isPending}
              onClick={() => move.mutate({ by, jobId: job.jobId })}
            >
              {missing > 0
                ? 'Let the job wait for them'
                : `On with it: ${JOB_STATE_LABELS[mayMoveTo]}`}
            </Button>
          )}
        </Group>
      </Alert>
      <RefusalAlert error={move.error} />
    </>
  );
}

const missingWords = (missing: number, day: string | null): string => {
  const parts = missing === 1 ? 'One part is missing' : `${missing} parts are missing`;
  return day === null ? parts : `${parts}, the slowest expected on ${day}`;
};

function nextWords({ missing, mayMoveTo, state, expectedOn }: JobParts): string {
  if (missing === 0) return 'Everything that this job waits for is on the shelf for it.';
  if (mayMoveTo !== null)
    return 'The job can wait where everybody sees it; what it waits for is written beside it.';
  if (state === 'waits-for-parts' && expectedOn === null)
    return 'The job waits. Not all of it is on order with a day.';
  return state === 'waits-for-parts'
    ? 'The job waits for them.'
    : 'They can be ordered while the job goes on.';
}
