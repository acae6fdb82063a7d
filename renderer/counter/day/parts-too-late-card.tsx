import { Text } from '@mantine/core';
import { IconCalendarX } from '@tabler/icons-react';
import { Link } from 'react-router';
import { useArrowRows } from '../../common/arrow-rows.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import classes from './day.module.css';
import type { Day } from './types.ts';

/** Jobs whose parts come after the day promised; nothing while all come in time. */
export function PartsTooLateCard({ jobs }: { jobs: Day['partsTooLate'] }) {
  const format = useFormat();
  const { list, onListKey } = useArrowRows<HTMLUListElement>();
  if (jobs.length === 0) return null;
  return (
    <Card
      title="Parts come after the promise"
      icon={<IconCalendarX size={22} aria-hidden />}
      flush
      aside={<Text fw={700}>{jobs.length}</Text>}
    >
      <ul ref={list} className={classes.rows} onKeyDown={onListKey}>
        {jobs.map(({ job, expectedOn }) => (
          <li key={job.id}>
            <Link to={`/job/${job.code}`} data-row className={classes.waiting}>
              <span className={classes.who}>
                <span className={classes.name}>{job.customerName}</span>
                <span className={classes.what}>{job.machine}</span>
              </span>
              <span className={classes.wait}>
                <span>Parts {format.shortDate(expectedOn)}</span>
                {job.promisedFor !== null && (
                  <span className={classes.since}>due {format.shortDate(job.promisedFor)}</span>
                )}
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </Card>
  );
}
