import { NumberInput, Select, SimpleGrid } from '@mantine/core';
import type { PriceFileSketch } from '../../../shared/contract/parts/index.ts';
import {
  DECIMAL_MARK_LABELS,
  DECIMAL_MARKS,
  DELIMITER_LABELS,
  DELIMITERS,
  type Delimiter,
  PRICED_BY,
  PRICED_BY_LABELS,
  TEXT_ENCODING_LABELS,
  TEXT_ENCODINGS,
  type TextEncoding,
} from '../../../shared/work/parts/price-file/words.ts';
import type { MappingDraft } from './mapping-draft.ts';

/** What somebody says of a file against what it looks like. */
export interface SeenAs {
  encoding?: TextEncoding;
  delimiter?: Delimiter;
  sheet?: string;
  headingLines?: number;
}

interface ReadingFormProps {
  sketch: PriceFileSketch;
  draft: MappingDraft;
  onSeenAs: (change: SeenAs) => void;
  onDraft: (change: Partial<MappingDraft>) => void;
}

const options = <Value extends string>(
  values: readonly Value[],
  labels: Record<Value, string>,
): { value: Value; label: string }[] => values.map((value) => ({ value, label: labels[value] }));

/** How the file is written: recognised, and open to correction. */
export function ReadingForm({ sketch, draft, onSeenAs, onDraft }: ReadingFormProps) {
  return (
    <SimpleGrid cols={{ base: 2, sm: 3, md: 5 }} spacing="sm">
      {sketch.kind === 'text' ? (
        <>
          <Select
            label="Letters"
            data={options(TEXT_ENCODINGS, TEXT_ENCODING_LABELS)}
            value={sketch.encoding}
            allowDeselect={false}
            onChange={(encoding) => encoding !== null && onSeenAs({ encoding })}
          />
          <Select
            label="Columns divided by"
            data={options(DELIMITERS, DELIMITER_LABELS)}
            value={sketch.delimiter}
            allowDeselect={false}
            onChange={(delimiter) => delimiter !== null && onSeenAs({ delimiter })}
          />
          <Select
            label="Decimal mark"
            data={options(DECIMAL_MARKS, DECIMAL_MARK_LABELS)}
            value={draft.decimalMark}
            allowDeselect={false}
            onChange={(decimalMark) => decimalMark !== null && onDraft({ decimalMark })}
          />
        </>
      ) : (
        <Select
          label="Sheet"
          data={sketch.sheets}
          value={sketch.sheet}
          allowDeselect={false}
          onChange={(sheet) => sheet !== null && onSeenAs({ sheet })}
        />
      )}
      <Select
        label="Prices are for"
        data={options(PRICED_BY, PRICED_BY_LABELS)}
        value={draft.pricedBy}
        allowDeselect={false}
        onChange={(pricedBy) => pricedBy !== null && onDraft({ pricedBy })}
      />
      <NumberInput
        label="Lines before the parts"
        min={0}
        max={50}
        allowDecimal={false}
        value={sketch.headingLines}
        onChange={(lines) =>
          typeof lines === 'number' &&
          lines !== sketch.headingLines &&
          onSeenAs({ headingLines: lines })
        }
      />
    </SimpleGrid>
  );
}
