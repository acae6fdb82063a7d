import { Text } from '@mantine/core';
import { IconPhoneOutgoing } from '@tabler/icons-react';
import { Link } from 'react-router';
import type { JobCard } from '../../../shared/contract/counter/index.ts';
import { useArrowRows } from '../../common/arrow-rows.ts';
import { Card } from '../../common/card.tsx';
import { Promised } from '../../common/promised.tsx';
import classes from './day.module.css';

/** Customers who do not know yet that another day was promised; nothing while all do. */
export function ToTellCard({ jobs }: { jobs: readonly JobCard[] }) {
  const { list, onListKey } = useArrowRows<HTMLUListElement>();
  if (jobs.length === 0) return null;
  return (
    <Card
      title="Customers to tell"
      icon={<IconPhoneOutgoing size={22} aria-hidden />}
      flush
      aside={<Text fw={700}>{jobs.length}</Text>}
    >
      <ul ref={list} className={classes.rows} onKeyDown={onListKey}>
        {jobs.map((job) => (
          <li key={job.id}>
            <Link to={`/job/${job.code}`} data-row className={classes.waiting}>
              <span className={classes.who}>
                <span className={classes.name}>{job.customerName}</span>
                <span className={classes.what}>{job.machine}</span>
                {job.customerPhone !== '' && (
                  <span className={classes.note}>{job.customerPhone}</span>
                )}
              </span>
              <Promised job={job} />
            </Link>
          </li>
        ))}
      </ul>
    </Card>
  );
}
