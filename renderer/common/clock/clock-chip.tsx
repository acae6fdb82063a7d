import { IconClockPlay } from '@tabler/icons-react';
import { Link } from 'react-router';
import classes from './clock.module.css';
import { lastedFigure } from './time-text.ts';
import { useMyClock } from './use-clock.ts';

/** In the top bar: the job on which whoever is here is clocked on, and the way to it. */
export function ClockChip() {
  const entry = useMyClock();
  if (entry === null) return null;
  const lasted = entry.minutes === 0 ? '0:00' : lastedFigure(entry.minutes);
  return (
    <Link
      to={`/job/${entry.jobCode}/bench`}
      className={classes.chip}
      title={`${entry.machine}, ${entry.customerName}`}
    >
      <IconClockPlay size={20} aria-hidden />
      <span className={classes.chipWords}>
        <span className={classes.spoken}>Your clock runs on </span>
        <span className={classes.chipCode}>{entry.jobCode}</span>
        <span className={classes.spoken}>, for </span>
        <span className={classes.chipTime}>{lasted}</span>
      </span>
    </Link>
  );
}
