import { Button, Stack, Switch } from '@mantine/core';
import { IconFileText } from '@tabler/icons-react';
import { type UseQueryResult, useMutation } from '@tanstack/react-query';
import { type ComponentProps, type ReactNode, useState } from 'react';
import type { ReportReach } from '../../../shared/work/reports.ts';
import { paperBytes, savePaper } from '../connection/papers.ts';
import { DateField } from '../date-field.tsx';
import { rememberChoice, rememberedChoice } from '../local-choice.ts';
import { Page, QueryView } from '../page.tsx';
import { PageStrip } from '../page-strip.tsx';
import { RefusalAlert } from '../refusal.tsx';
import { saveFile } from '../save-file.ts';
import type { Period } from './period.ts';
import { PeriodPicker } from './period-picker.tsx';
import { ReportTables } from './report-tables.tsx';
import classes from './reports.module.css';

/** The whole as PDF, or one of its tables as CSV. */
export type ReportForm = { form: 'pdf' } | { form: 'csv'; table: string; mark: boolean };

interface ReportPageProps {
  title: string;
  reports: readonly { name: string; title: string; address: string }[];
  /** The name of the one that is shown. */
  shown: string;
  reach: ReportReach;
  period: Period;
  day: string;
  onDays: (days: Partial<Period>) => void;
  query: UseQueryResult<ComponentProps<typeof ReportTables>['report']>;
  /** Makes the report that is shown as a file. */
  fileOf: (form: ReportForm) => Promise<{ fileName: string; bytes: string; mediaType: string }>;
  /** What else this report can be asked. */
  children?: ReactNode;
}

/** Reports, each to be read, saved as PDF, or taken into another program as CSV. */
export function ReportPage(props: ReportPageProps) {
  const { title, reports, shown, reach, period, day, onDays, query, fileOf, children } = props;
  const [mark, setMark] = useState(() => rememberedChoice('csv-mark') === 'yes');
  const save = useMutation({
    mutationFn: async (form: ReportForm) => {
      const file = await fileOf(form);
      const bytes = paperBytes(file.bytes);
      if (form.form === 'pdf') await savePaper(file.fileName, bytes);
      else saveFile(file.fileName, bytes, file.mediaType);
    },
  });
  return (
    <Page
      title={title}
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
      <Stack gap="md">
        <PageStrip
          inset
          label="Reports"
          links={reports.map(({ name, title: label, address }) => ({
            to: address,
            label,
            current: name === shown ? 'page' : undefined,
          }))}
        />
        <div className={classes.stack}>
          <div className={classes.asked}>
            {reach === 'period' && <PeriodPicker value={period} onChange={onDays} />}
            {reach === 'day' && (
              <DateField
                label="At the end of"
                value={day}
                onChange={(to) => to !== null && onDays({ to })}
              />
            )}
            {children}
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
      </Stack>
    </Page>
  );
}
