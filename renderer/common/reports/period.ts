import { Temporal } from 'temporal-polyfill';

/** Both days are within it; ISO calendar dates. */
export interface Period {
  from: string;
  to: string;
}

export const USUAL_PERIODS = [
  'this-month',
  'last-month',
  'this-quarter',
  'last-quarter',
  'this-year',
  'last-year',
] as const;
export type UsualPeriod = (typeof USUAL_PERIODS)[number];

export const PERIOD_LABELS: Record<UsualPeriod, string> = {
  'this-month': 'This month',
  'last-month': 'Last month',
  'this-quarter': 'This quarter',
  'last-quarter': 'Last quarter',
  'this-year': 'This year',
  'last-year': 'Last year',
};

/** A usual period as it lies around a day: whole months, quarters and years of the calendar. */
export function periodAround(usual: UsualPeriod, today: string): Period {
  const day = Temporal.PlainDate.from(today);
  const months = usual.endsWith('month') ? 1 : usual.endsWith('quarter') ? 3 : 12;
  const month = day.month - ((day.month - 1) % months);
  const first = day.with({ month, day: 1 }).subtract({
    months: usual.startsWith('last') ? months : 0,
  });
  return {
    from: first.toString(),
    to: first.add({ months }).subtract({ days: 1 }).toString(),
  };
}

/** Which usual period this is, seen from a day; undefined for any other. */
export const usualPeriod = ({ from, to }: Period, today: string): UsualPeriod | undefined =>
  USUAL_PERIODS.find((usual) => {
    const around = periodAround(usual, today);
    return around.from === from && around.to === to;
  });
