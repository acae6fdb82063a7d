import { SegmentedControl, Text } from '@mantine/core';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { AGE_BASES } from '../../../shared/money/books/index.ts';
import {
  REPORT_REACH,
  REPORT_TITLES,
  REPORTS,
  type ReportName,
} from '../../../shared/work/reports.ts';
import { desk, deskQuery } from '../../common/desk.ts';
import { periodAround } from '../../common/reports/period.ts';
import { ReportPage } from '../../common/reports/report-page.tsx';
import { useToday } from '../../common/shop.tsx';
import { dateOr, useAddress } from '../../common/use-address.ts';

const BASIS_LABELS = { 'due-date': 'Since it was due', 'invoice-date': 'Since the invoice' };

/** Reports of a time. */
export function ReportsPage() {
  const today = useToday();
  const [address, keep] = useAddress();
  const name = REPORTS.find((each) => each === address('report')) ?? 'sales';
  const month = periodAround('this-month', today);
  const period = { from: dateOr(address('from'), month.from), to: dateOr(address('to'), month.to) };
  const reach = REPORT_REACH[name];
  const to = reach === 'day' ? dateOr(address('to'), today) : period.to;
  const basis = AGE_BASES.find((each) => each === address('basis')) ?? 'due-date';
  const asked = { report: name, from: reach === 'day' ? to : period.from, to, basis };
  const query = useQuery(
    deskQuery.till.report.queryOptions({ input: asked, placeholderData: keepPreviousData }),
  );
  return (
    <ReportPage
      title="Reports"
      reports={REPORTS.map((each) => ({
        name: each,
        title: REPORT_TITLES[each],
        address: reportAddress(each, address('from'), address('to')),
      }))}
      shown={name}
      reach={reach}
      period={period}
      day={to}
      onDays={keep}
      query={query}
      fileOf={(form) => desk.till.reportFile({ ...asked, ...form })}
    >
      {name === 'receivables' && (
        <div>
          <Text component="span" id="report-age-basis" fw={600}>
            Age counts
          </Text>
          <SegmentedControl
            fullWidth
            size="md"
            aria-labelledby="report-age-basis"
            data={AGE_BASES.map((value) => ({ value, label: BASIS_LABELS[value] }))}
            value={basis}
            onChange={(value) => keep({ basis: value })}
          />
        </div>
      )}
    </ReportPage>
  );
}

function reportAddress(report: ReportName, from: string | null, to: string | null): string {
  const days = new URLSearchParams({ report });
  if (from !== null) days.set('from', from);
  if (to !== null) days.set('to', to);
  return `/office/books/reports?${days}`;
}
