import { Button, Text } from '@mantine/core';
import type { ReportTable } from '../../../shared/contract/till/index.ts';
import { Card } from '../card.tsx';
import { ReportFigures } from './report-figures.tsx';

interface ReportTablesProps {
  report: { report: string; tables: readonly ReportTable[] };
  /** Keeps one of them as CSV. */
  onSave: (table: string) => void;
}

/** The tables of a report, each with what its figures are and a way to take it into another program. */
export const ReportTables = ({ report: { report, tables }, onSave }: ReportTablesProps) =>
  tables.map((table) => (
    <Card
      key={`${report} ${table.key}`}
      title={table.heading}
      flush
      aside={
        <Button
          variant="subtle"
          aria-label={`Save as CSV: ${table.heading}`}
          onClick={() => onSave(table.key)}
        >
          Save as CSV
        </Button>
      }
    >
      {table.note !== '' && (
        <Text size="sm" c="dimmed" px="md" mb="xs" maw="80ch">
          {table.note}
        </Text>
      )}
      <ReportFigures table={table} />
    </Card>
  ));
