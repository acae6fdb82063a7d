import { Box, Select, Table } from '@mantine/core';
import type { PriceFileSketch } from '../../../shared/contract/parts/index.ts';
import {
  PRICE_FILE_FIELD_LABELS,
  PRICE_FILE_FIELDS,
  type PriceFileField,
} from '../../../shared/work/parts/price-file/words.ts';
import { Sheet } from '../../common/sheet.tsx';
import type { MappingDraft } from './mapping-draft.ts';
import classes from './price-files.module.css';

interface SampleTableProps {
  sketch: PriceFileSketch;
  draft: MappingDraft;
  onField: (column: number, field: PriceFileField | null) => void;
}

/** A column that holds nothing of these. */
const LEFT_OUT = 'left-out';

const FIELDS = [
  ...PRICE_FILE_FIELDS.map((value) => ({ value, label: PRICE_FILE_FIELD_LABELS[value] })),
  { value: LEFT_OUT, label: 'Left out' },
];

/** The first lines of a file, with what each column holds above it. */
export function SampleTable({ sketch, draft, onField }: SampleTableProps) {
  const columns = draft.fields.map((field, column) => ({
    field,
    column,
    heading: sketch.headings[column] || `Column ${column + 1}`,
  }));
  const rows = sketch.sample.map((cells, row) => ({ cells, row }));
  return (
    <Box
      component="section"
      className={classes.scroll}
      aria-label="First lines of the file"
      tabIndex={0}
    >
      <Sheet>
        <Table className={classes.sample}>
          <Table.Thead>
            <Table.Tr>
              {columns.map(({ field, column, heading }) => (
                <Table.Th key={column}>
                  <span className={classes.heading}>{heading}</span>
                  <Select
                    aria-label={`${heading} holds`}
                    size="sm"
                    data={FIELDS}
                    value={field ?? LEFT_OUT}
                    allowDeselect={false}
                    onChange={(chosen) =>
                      onField(column, PRICE_FILE_FIELDS.find((each) => each === chosen) ?? null)
                    }
                  />
                </Table.Th>
              ))}
            </Table.Tr>
          </Table.Thead>
          <Table.Tbody>
            {rows.map(({ cells, row }) => (
              <Table.Tr key={row}>
                {columns.map(({ column, field }) => (
                  <Table.Td key={column} className={field === null ? classes.left : undefined}>
                    {cells[column] ?? ''}
                  </Table.Td>
                ))}
              </Table.Tr>
            ))}
          </Table.Tbody>
        </Table>
      </Sheet>
    </Box>
  );
}
