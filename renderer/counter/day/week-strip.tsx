import { useFormat } from '../../common/format.ts';
import { useShop } from '../../common/shop.tsx';
import classes from './day.module.css';
import type { Day } from './types.ts';
import { promisedByDay } from './week.ts';

/** More dots than this are counted, not seen. */
const DOTS = 5;

/** Today and the week ahead, a dot for each machine promised. */
export function WeekStrip({ day }: { day: Day }) {
  const { locale } = useShop();
  const format = useFormat();
  const weekday = new Intl.DateTimeFormat(locale, { weekday: 'short', timeZone: 'UTC' });
  return (
    <ol className={classes.week} aria-label="Promised by day">
      {promisedByDay(day).map(({ date, jobs }) => (
        <li key={date} className={classes.cell} data-today={date === day.date}>
          <span className={classes.weekday} aria-hidden>
            {weekday.format(new Date(`${date}T12:00:00Z`))} {Number(date.slice(8))}
          </span>
          <span className={classes.dots} aria-hidden>
            {jobs.slice(0, DOTS).map((job) => (
              <span key={job.id} className={classes.dot} />
            ))}
          </span>
          <span className={classes.tally} aria-hidden>
            {jobs.length === 0 ? '–' : jobs.length}
          </span>
          <span className={classes.spoken}>
            {format.date(date)}: {jobs.length} promised
          </span>
        </li>
      ))}
    </ol>
  );
}
