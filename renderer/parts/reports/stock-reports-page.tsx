import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { addDays } from '../../../shared/work/calendar.ts';
import {
  STOCK_REPORT_REACH,
  STOCK_REPORT_TITLES,
  STOCK_REPORTS,
  type StockReportName,
} from '../../../shared/work/parts/stock-reports.ts';
import { desk, deskQuery } from '../../common/desk.ts';
import { type Period, periodAround } from '../../common/reports/period.ts';
import { ReportPage } from '../../common/reports/report-page.tsx';
import { useToday } from '../../common/shop.tsx';
import { dateOr, useAddress } from '../../common/use-address.ts';

/** What lay for so many days without being used is looked at first. */
const LONG_IDLE = 180;

/** A year says more of a shelf than a month does; what is dead shows by what happened up to today. */
const usualPeriodOf = (report: StockReportName, today: string): Period =>
  report === 'dead-stock'
    ? { from: addDays(today, -LONG_IDLE), to: today }
    : periodAround('this-year', today);

/** Reports of the stores. */
export function StockReportsPage() {
  const today = useToday();
  const [address, keep] = useAddress();
  const report = STOCK_REPORTS.find((each) => each === address('report')) ?? 'stock-value';
  const reach = STOCK_REPORT_REACH[report];
  const usual = usualPeriodOf(report, today);
  const period = { from: dateOr(address('from'), usual.from), to: dateOr(address('to'), usual.to) };
  const to = reach === 'period' ? period.to : dateOr(address('to'), today);
  const asked = { report, from: reach === 'period' ? period.from : to, to };
  const query = useQuery(
    deskQuery.parts.stockReport.queryOptions({ input: asked, placeholderData: keepPreviousData }),
  );
  return (
    <ReportPage
      title="Reports of the stores"
      reports={STOCK_REPORTS.map((each) => ({
        name: each,
        title: STOCK_REPORT_TITLES[each],
        address: `/parts/reports?report=${each}`,
      }))}
      shown={report}
      reach={reach}
      period={period}
      day={to}
      onDays={keep}
      query={query}
      fileOf={(form) => desk.parts.stockReportFile({ ...asked, ...form })}
    />
  );
}
