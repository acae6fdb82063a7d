import { addDays, weekBegins } from '../../../shared/work/calendar.ts';

/** What the page of hours shows: a week or one day of it. */
export interface HoursPeriod {
  span: 'week' | 'day';
  from: string;
  until: string;
}

const DATE = /^\d{4}-\d{2}-\d{2}$/;

/** The period that the address says; this week when it says none. */
export function periodOf(search: URLSearchParams, today: string): HoursPeriod {
  const asked = search.get('on') ?? '';
  const on = DATE.test(asked) && !Number.isNaN(Date.parse(asked)) ? asked : today;
  if (search.get('span') === 'day') return { span: 'day', from: on, until: on };
  const from = weekBegins(on);
  return { span: 'week', from, until: addDays(from, 6) };
}

/** The address of a period. */
export const searchOf = (span: HoursPeriod['span'], on: string): string =>
  new URLSearchParams({ on, ...(span === 'day' && { span }) }).toString();

/** A day of the period before or after. */
export const beside = ({ span, from }: HoursPeriod, step: 1 | -1): string =>
  addDays(from, step * (span === 'week' ? 7 : 1));
