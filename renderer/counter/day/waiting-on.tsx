import { Anchor, Text } from '@mantine/core';
import { IconTool, IconTruckDelivery, IconUser, type TablerIcon } from '@tabler/icons-react';
import { Link } from 'react-router';
import type { JobCard } from '../../../shared/contract/counter/index.ts';
import { JOB_STATE_LABELS, type WaitsOn } from '../../../shared/work/counter/job-state.ts';
import { useArrowRows } from '../../common/arrow-rows.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import classes from './day.module.css';

type Waited = Exclude<WaitsOn, 'nobody'>;

const HEADS: Record<Waited, { title: string; icon: TablerIcon; none: string }> = {
  bench: { title: 'Waits on the bench', icon: IconTool, none: 'The bench has nothing to do.' },
  customer: {
    title: 'Waits on the customer',
    icon: IconUser,
    none: 'No customer owes us a word or a visit.',
  },
  supplier: {
    title: 'Waits on a supplier',
    icon: IconTruckDelivery,
    none: 'No job waits for parts.',
  },
};

/** As many as are read at a glance; the rest are a click away. */
const SHOWN = 6;
/** The bar is full after a month. */
const FULL = 30 * 86_400_000;

/** Jobs by whose move it is, as the desk sends them: who has waited longest comes first. */
export function WaitingOn({ on, jobs }: { on: WaitsOn; jobs: readonly JobCard[] }) {
  const { list, onListKey } = useArrowRows<HTMLUListElement>();
  if (on === 'nobody') return null;
  const head = HEADS[on];

  const more = jobs.length - SHOWN;
  return (
    <Card
      title={head.title}
      icon={<head.icon size={22} aria-hidden />}
      flush
      aside={<Text fw={700}>{jobs.length}</Text>}
    >
      {jobs.length === 0 ? (
        <Text c="dimmed" size="sm" px="md" pb="md">
          {head.none}
        </Text>
      ) : (
        <ul ref={list} className={classes.rows} onKeyDown={onListKey}>
          {jobs.slice(0, SHOWN).map((job) => (
            <WaitingRow key={job.id} job={job} />
          ))}
        </ul>
      )}
      {more > 0 && (
        <div className={classes.more}>
          <Anchor component={Link} to={`/jobs?show=${on}`} size="sm">
            and {more} more
          </Anchor>
        </div>
      )}
    </Card>
  );
}

function WaitingRow({ job }: { job: JobCard }) {
  const format = useFormat();
  const waited = Math.max(0, Date.now() - Date.parse(job.stateSince));
  return (
    <li>
      <Link to={`/job/${job.code}`} data-row className={classes.waiting}>
        <span className={classes.who}>
          <bdi className={classes.name}>{job.customerName}</bdi>
          <span className={classes.what}>{job.machine}</span>
          {job.stateNote !== '' && <bdi className={classes.note}>{job.stateNote}</bdi>}
        </span>
        <span className={classes.wait}>
          <span>{JOB_STATE_LABELS[job.state]}</span>
          <span className={classes.since}>{format.since(job.stateSince)}</span>
          <span className={classes.track} aria-hidden>
            <span
              className={classes.bar}
              style={{ width: `${Math.min(100, (waited / FULL) * 100)}%` }}
            />
          </span>
        </span>
      </Link>
    </li>
  );
}
