import { Button, Group, Stack, Text } from '@mantine/core';
import { IconArrowRight } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import { WAITS_ON_LABELS } from '../../../shared/work/counter/job-state.ts';
import { deskQuery } from '../../common/desk.ts';
import { useJob } from '../../common/job.tsx';
import { Page } from '../../common/page.tsx';
import { PromiseCard } from '../promise/promise-card.tsx';
import { AgreedCard, IntakeCard } from './intake-card.tsx';
import { MovesCard } from './moves-card.tsx';
import { nextStep } from './next-step.ts';
import classes from './overview.module.css';
import { PapersCard } from './papers-card.tsx';
import { CustomerCard, MachineCard } from './people-and-machine.tsx';

/** A job's first page: all that the counter knows of it, and what it wants next. */
export function JobOverviewPage() {
  const job = useJob();
  const build = useQuery(
    deskQuery.bench.build.queryOptions({
      input: { jobId: job.id },
      enabled: job.state === 'on-the-bench',
    }),
  );
  const open = build.data?.steps.filter(({ hold, state }) => hold && state === 'open').length;
  const step = nextStep(job, open ?? null);
  return (
    <Page title="Overview">
      <Stack gap="md">
        <Group className={classes.next} justify="space-between" gap="sm">
          <div style={{ flex: '1 1 20rem' }}>
            <Text fw={600}>{step.says}</Text>
            {job.waitsOn !== 'nobody' && (
              <Text size="sm" c="dimmed">
                Waits on {WAITS_ON_LABELS[job.waitsOn].toLowerCase()}.
              </Text>
            )}
          </div>
          <Button
            component={Link}
            to={step.page}
            rightSection={<IconArrowRight size={18} aria-hidden />}
          >
            {step.label}
          </Button>
        </Group>
        <div className={classes.columns}>
          <Stack gap="md">
            <IntakeCard job={job} />
            <MachineCard job={job} />
            <PapersCard job={job} />
          </Stack>
          <div className={classes.side}>
            <CustomerCard job={job} />
            <PromiseCard job={job} />
            <AgreedCard job={job} />
            <MovesCard job={job} />
          </div>
        </div>
      </Stack>
    </Page>
  );
}
