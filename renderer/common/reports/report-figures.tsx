import { Anchor, Box, Table, Text } from '@mantine/core';
import { Link } from 'react-router';
import type { ReportTable } from '../../../shared/contract/till/index.ts';
import { formatQuantity, formatRate } from '../../../shared/money/index.ts';
import { useMoney, useShop } from '../shop.tsx';
import classes from './reports.module.css';

type ColumnKind = ReportTable['columns'][number]['as'];
type Cell = ReportTable['rows'][number][number];

/** A table of more columns than this is set smaller. */
const MANY = 7;

const isFigure = (as: ColumnKind): boolean => as !== 'text' && as !== 'job' && as !== 'date';

/** Dates, numbers of documents and of telephones stand on one line. */
const isWhole = (value: Cell | undefined, as: ColumnKind): boolean =>
  as === 'date' || (typeof value === 'string' && !/\p{Ll}/u.test(value));

function useWords(): (value: Cell | undefined, as: ColumnKind) => string {
  const money = useMoney();
  const { locale } = useShop();
  // Without the day of the week: a table of many columns is wide enough.
  const date = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' });
  return (value, as) => {
    if (value === null || value === undefined) return '';
    if (typeof value === 'string')
      return as === 'date' ? date.format(new Date(`${value}T12:00:00Z`)) : value;
    if (as === 'money') return money(value);
    if (as === 'hours' || as === 'quantity') return formatQuantity(value, locale);
    return as === 'share' ? formatRate(value, locale) : String(value);
  };
}

/** The figures of a report's table, as the office reads them. */
export function ReportFigures({ table }: { table: ReportTable }) {
  const words = useWords();
  const { columns, rows, total, heading } = table;
  if (rows.length === 0)
    return (
      <Text c="dimmed" px="md" pb="md">
        Nothing in this time.
      </Text>
    );
  return (
    <Box
      component="section"
      className={classes.scroll}
      aria-label={`${heading}, figures`}
      tabIndex={0}
    >
      <Table
        verticalSpacing={6}
        highlightOnHover
        className={classes.figures}
        data-many={columns.length > MANY || undefined}
      >
        <Table.Thead>
          <Table.Tr>
            {columns.map(({ label, as }) => (
              <Table.Th key={label} data-figure={isFigure(as) || undefined}>
                {label}
              </Table.Th>
            ))}
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {Object.entries(rows).map(([place, row]) => (
            <Table.Tr key={place}>
              {columns.map(({ label, as }, index) => (
                <Table.Td
                  key={label}
                  data-figure={isFigure(as) || undefined}
                  data-whole={isWhole(row[index], as) || undefined}
                >
                  {as === 'job' ? (
                    <Anchor inherit component={Link} to={`/job/${row[index]}/till`}>
                      {row[index]}
                    </Anchor>
                  ) : (
                    words(row[index], as)
                  )}
                </Table.Td>
              ))}
            </Table.Tr>
          ))}
        </Table.Tbody>
        {total !== null && (
          <Table.Tfoot>
            <Table.Tr>
              {columns.map(({ label, as }, index) => {
                const sum = total[index];
                return (
                  <Table.Th key={label} data-figure={isFigure(as) || undefined}>
                    {typeof sum === 'string' ? sum : words(sum, as)}
                  </Table.Th>
                );
              })}
            </Table.Tr>
          </Table.Tfoot>
        )}
      </Table>
    </Box>
  );
}
