import { Button, SegmentedControl, Switch, Text } from '@mantine/core';
import { IconFileText } from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'react-router';
import { AGE_BASES } from '../../../shared/money/books/index.ts';
import {
  REPORT_REACH,
  REPORT_TITLES,
  REPORTS,
  type ReportName,
} from '../../../shared/work/reports.ts';
import { DateField } from '../../common/date-field.tsx';
import { deskQuery } from '../../common/desk.ts';
import { rememberChoice, rememberedChoice } from '../../common/local-choice.ts';
import { Page, QueryView } from '../../common/page.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useToday } from '../../common/shop.tsx';
import classes from './books.module.css';
import { type Period, periodAround } from './period.ts';
import { PeriodPicker } from './period-picker.tsx';
import { ReportTables } from './report-tables.tsx';
import { dateOr, useAddress } from './use-address.ts';
import { useSaveReport } from './use-save-report.ts';

const BASIS_LABELS = { 'due-date': 'Since it was due', 'invoice-date': 'Since the invoice' };

/** Reports of a time, each to be read, saved as PDF, or taken into another program as CSV. */
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
  const save = useSaveReport(asked);
  const [mark, setMark] = useState(() => rememberedChoice('csv-mark') === 'yes');
  const choose = (days: Period) => keep({ ...days });
  return (
    <Page
      title="Reports"
      actions={
        <Button
          variant="default"
          leftSection={<IconFileText size={18} aria-hidden />}
          loading={save.isPending && save.variables?.form === 'pdf'}
          onClick={() => save.mutate({ form: 'pdf' })}
        >
          Save as PDF
        </Button>
      }
    >
      <div className={classes.reports}>
        <nav aria-label="Reports" className={classes.reportList}>
          {REPORTS.map((each) => (
            <Link
              key={each}
              to={reportAddress(each, address('from'), address('to'))}
              className={classes.report}
              aria-current={each === name ? 'page' : undefined}
            >
              {REPORT_TITLES[each]}
            </Link>
          ))}
        </nav>
        <div className={classes.stack}>
          <div className={classes.asked}>
            {reach === 'period' && <PeriodPicker value={period} onChange={choose} />}
            {reach === 'day' && (
              <DateField
                label="At the end of"
                value={to}
                onChange={(day) => day !== null && keep({ to: day })}
              />
            )}
            {name === 'receivables' && (
              <div>
                <Text component="span" id="report-age-basis" fw={500}>
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
            <Switch
              className={classes.mark}
              label="CSV with a byte-order mark"
              description="For spreadsheets that else mistake letters"
              checked={mark}
              onChange={(event) => {
                setMark(event.currentTarget.checked);
                rememberChoice('csv-mark', event.currentTarget.checked ? 'yes' : 'no');
              }}
            />
          </div>
          <RefusalAlert error={save.error} />
          <QueryView query={query}>
            {(report) => (
              <ReportTables
                report={report}
                onSave={(table) => save.mutate({ form: 'csv', table, mark })}
              />
            )}
          </QueryView>
        </div>
      </div>
    </Page>
  );
}

function reportAddress(report: ReportName, from: string | null, to: string | null): string {
  const days = new URLSearchParams({ report });
  if (from !== null) days.set('from', from);
  if (to !== null) days.set('to', to);
  return `/office/books/reports?${days}`;
}
