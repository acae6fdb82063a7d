import { Button, Switch } from '@mantine/core';
import { IconFileText } from '@tabler/icons-react';
import { keepPreviousData, useMutation, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'react-router';
import { addDays } from '../../../shared/work/calendar.ts';
import {
  STOCK_REPORT_REACH,
  STOCK_REPORT_TITLES,
  STOCK_REPORTS,
  type StockReportName,
} from '../../../shared/work/stock-reports.ts';
import { paperBytes, savePaper } from '../../common/connection/papers.ts';
import { DateField } from '../../common/date-field.tsx';
import { desk, deskQuery } from '../../common/desk.ts';
import { rememberChoice, rememberedChoice } from '../../common/local-choice.ts';
import { Page, QueryView } from '../../common/page.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { saveFile } from '../../common/save-file.ts';
import { useToday } from '../../common/shop.tsx';
import classes from '../../office/books/books.module.css';
import { type Period, periodAround } from '../../office/books/period.ts';
import { PeriodPicker } from '../../office/books/period-picker.tsx';
import { ReportTables } from '../../office/books/report-tables.tsx';
import { dateOr, useAddress } from '../../office/books/use-address.ts';

type Form = { form: 'pdf' } | { form: 'csv'; table: string };

/** What lay for so many days without being used is looked at first. */
const LONG_IDLE = 180;

/** A year says more of a shelf than a month does; what is dead shows by what happened up to today. */
const usualPeriodOf = (report: StockReportName, today: string): Period =>
  report === 'dead-stock'
    ? { from: addDays(today, -LONG_IDLE), to: today }
    : periodAround('this-year', today);

/** Reports of the stores, each to be read, saved as PDF, or taken into another program as CSV. */
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
  const [mark, setMark] = useState(() => rememberedChoice('csv-mark') === 'yes');
  const save = useMutation({
    mutationFn: async (form: Form) => {
      const file = await desk.parts.stockReportFile({ ...asked, mark, ...form });
      const bytes = paperBytes(file.bytes);
      if (form.form === 'pdf') await savePaper(file.fileName, bytes);
      else saveFile(file.fileName, bytes, file.mediaType);
    },
  });
  return (
    <Page
      title="Reports of the stores"
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
          {STOCK_REPORTS.map((each) => (
            <Link
              key={each}
              to={`/parts/reports?report=${each}`}
              className={classes.report}
              aria-current={each === report ? 'page' : undefined}
            >
              {STOCK_REPORT_TITLES[each]}
            </Link>
          ))}
        </nav>
        <div className={classes.stack}>
          <div className={classes.asked}>
            {reach === 'period' && (
              <PeriodPicker value={period} onChange={(days) => keep({ ...days })} />
            )}
            {reach === 'day' && (
              <DateField
                label="At the end of"
                value={to}
                onChange={(day) => day !== null && keep({ to: day })}
              />
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
            {(made) => (
              <ReportTables report={made} onSave={(table) => save.mutate({ form: 'csv', table })} />
            )}
          </QueryView>
        </div>
      </div>
    </Page>
  );
}
