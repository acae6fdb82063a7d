import { Anchor } from '@mantine/core';
import { Link } from 'react-router';
import type { ClockEntry } from '../../../shared/contract/till/index.ts';
import classes from './hours.module.css';

/** What somebody worked on: the job, the machine and the kind of work. */
export function EntryWhat({ entry }: { entry: ClockEntry }) {
  return (
    <span className={classes.who}>
      <span>
        <Anchor component={Link} to={`/job/${entry.jobCode}`} className={classes.code}>
          {entry.jobCode}
        </Anchor>{' '}
        <bdi>{entry.customerName}</bdi>
      </span>
      <span className={classes.quiet}>
        {[entry.machine, entry.workKind].filter(Boolean).join(', ')}
      </span>
    </span>
  );
}
