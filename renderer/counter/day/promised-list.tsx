import { Text } from '@mantine/core';
import type { ReactNode } from 'react';
import { Link } from 'react-router';
import type { JobCard } from '../../../shared/contract/counter/index.ts';
import { useArrowRows } from '../../common/arrow-rows.ts';
import { StateBadge } from '../../common/badges.tsx';
import { Card } from '../../common/card.tsx';
import { Promised } from '../../common/promised.tsx';
import classes from './day.module.css';

interface PromisedListProps {
  title: string;
  icon: ReactNode;
  jobs: readonly JobCard[];
  /** What is said when there are none. */
  none: string;
  urgent?: boolean;
}

/** Jobs by the day that was promised. */
export function PromisedList({ title, icon, jobs, none, urgent = false }: PromisedListProps) {
  const { list, onListKey } = useArrowRows<HTMLUListElement>();
  return (
    <div data-urgent={urgent && jobs.length > 0} className={classes.block}>
      <Card title={title} icon={icon} flush aside={<Text fw={700}>{jobs.length}</Text>}>
        {jobs.length === 0 ? (
          <Text c="dimmed" size="sm" px="md" pb="md">
            {none}
          </Text>
        ) : (
          <ul ref={list} className={classes.rows} onKeyDown={onListKey}>
            {jobs.map((job) => (
              <li key={job.id}>
                <Link to={`/job/${job.code}`} data-row className={classes.promise}>
                  <span className={classes.code}>{job.code}</span>
                  <span className={classes.who}>
                    <bdi className={classes.name}>{job.customerName}</bdi>
                    <span className={classes.what}>{job.machine}</span>
                  </span>
                  <StateBadge state={job.state} />
                  <Promised job={job} />
                </Link>
              </li>
            ))}
          </ul>
        )}
      </Card>
    </div>
  );
}
