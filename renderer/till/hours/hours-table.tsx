import type { ClockedHours } from '../../../shared/contract/till/index.ts';
import { Card } from '../../common/card.tsx';
import { lastedFigure } from '../../common/clock/time-text.ts';
import { useFormat } from '../../common/format.ts';
import { useShop, useToday } from '../../common/shop.tsx';
import classes from './hours.module.css';

/** Hours by person and day; a day's heading opens the day. */
export function HoursTable({
  hours,
  onDay,
}: {
  hours: ClockedHours;
  onDay: (date: string) => void;
}) {
  const { locale } = useShop();
  const today = useToday();
  const format = useFormat();
  const weekday = new Intl.DateTimeFormat(locale, { weekday: 'short', timeZone: 'UTC' });
  const dates = hours.people[0]?.days.map(({ date }) => date) ?? [];
  const sumOf = (date: string) =>
    hours.people.reduce(
      (sum, { days }) => sum + (days.find((day) => day.date === date)?.minutes ?? 0),
      0,
    );
  const all = hours.people.reduce((sum, { minutes }) => sum + minutes, 0);

  return (
    <Card title="By person" flush>
      <div className={classes.scroll}>
        <table className={classes.table}>
          <caption className={classes.spoken}>Hours and minutes by person and day</caption>
          <thead>
            <tr>
              <th scope="col">Person</th>
              {dates.map((date) => (
                <th key={date} scope="col" className={classes.figure} data-today={date === today}>
                  {dates.length === 1 ? (
                    format.shortDate(date)
                  ) : (
                    <button
                      type="button"
                      className={classes.day}
                      aria-label={`Show ${format.date(date)}`}
                      onClick={() => onDay(date)}
                    >
                      {weekday.format(new Date(`${date}T12:00:00Z`))} {Number(date.slice(8))}
                    </button>
                  )}
                </th>
              ))}
              {dates.length > 1 && (
                <th scope="col" className={classes.figure}>
                  Week
                </th>
              )}
            </tr>
          </thead>
          <tbody>
            {hours.people.map((person) => (
              <tr key={person.staffId}>
                <th scope="row">{person.name}</th>
                {person.days.map(({ date, minutes }) => (
                  <td key={date} className={classes.figure} data-today={date === today}>
                    {lastedFigure(minutes)}
                  </td>
                ))}
                {dates.length > 1 && (
                  <td className={classes.figure}>
                    <strong>{lastedFigure(person.minutes)}</strong>
                  </td>
                )}
              </tr>
            ))}
          </tbody>
          {hours.people.length > 1 && (
            <tfoot>
              <tr>
                <th scope="row">Together</th>
                {dates.map((date) => (
                  <td key={date} className={classes.figure} data-today={date === today}>
                    {lastedFigure(sumOf(date))}
                  </td>
                ))}
                {dates.length > 1 && (
                  <td className={classes.figure}>
                    <strong>{lastedFigure(all)}</strong>
                  </td>
                )}
              </tr>
            </tfoot>
          )}
        </table>
      </div>
    </Card>
  );
}
