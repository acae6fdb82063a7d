import { SegmentedControl, Select, Stack, Text, TextInput } from '@mantine/core';
import type { MeasuredCheck } from '../../../shared/work/bench/diagnosis.ts';
import type { ReadFigures } from '../../../shared/work/bench/diagnosis-figures.ts';
import { figureRemarks } from '../../../shared/work/bench/diagnosis-words.ts';
import { LEAK_PATH_LABELS, LEAK_PATHS } from '../../../shared/work/bench/test-run.ts';
import { pressureBand } from '../pressure-band.ts';
import classes from './diagnose.module.css';
import type { FindingDraft } from './finding-draft.ts';

const NO_FIGURE: FindingDraft['figures'][number] = { text: '', path: 'none' };

/** What the gauge showed, a row for each cylinder, and what the figures say together. */
export function FigureFields(props: {
  readonly check: MeasuredCheck;
  readonly cylinders: number;
  readonly draft: FindingDraft;
  readonly read: ReadFigures;
  /** What the spec book says of cranking pressure, kPa. */
  readonly book: { low: number | null; high: number | null } | null;
  readonly faultAt: (index: number) => string | undefined;
  readonly onChange: (part: Partial<FindingDraft>) => void;
}) {
  const { check, cylinders, draft, read, book, faultAt, onChange } = props;
  const isLeak = check === 'leak-down';
  const each = Array.from({ length: cylinders }, (_, index) => index);
  const rowAt = (index: number) => draft.figures[index] ?? NO_FIGURE;
  const change = (at: number, part: Partial<FindingDraft['figures'][number]>) =>
    onChange({
      figures: each.map((index) => ({ ...rowAt(index), ...(index === at ? part : {}) })),
    });
  const of = (index: number) => (cylinders > 1 ? `, cylinder ${index + 1}` : '');
  return (
    <Stack gap="sm">
      {!isLeak && (
        <SegmentedControl
          aria-label="Unit of pressure"
          value={draft.pressureUnit}
          onChange={(pressureUnit) => onChange({ pressureUnit })}
          data={['psi', 'kPa']}
          size="md"
          className={classes.units}
        />
      )}
      {each.map((index) => (
        <div key={index} className={classes.figures}>
          <TextInput
            label={`${isLeak ? 'Leak' : 'Cranking pressure'}${of(index)}`}
            rightSection={<Text size="sm">{isLeak ? '%' : draft.pressureUnit}</Text>}
            rightSectionWidth={52}
            value={rowAt(index).text}
            onChange={(event) => change(index, { text: event.currentTarget.value })}
            error={faultAt(index)}
            inputMode="decimal"
            autoComplete="off"
            maxLength={40}
            classNames={{ input: classes.figure }}
          />
          {isLeak && (
            <Select
              label={`Air leaves by${of(index)}`}
              data={LEAK_PATHS.map((value) => ({ value, label: LEAK_PATH_LABELS[value] }))}
              value={rowAt(index).path}
              allowDeselect={false}
              onChange={(value) => {
                const path = LEAK_PATHS.find((each) => each === value);
                if (path !== undefined) change(index, { path });
              }}
              classNames={{ input: classes.choice }}
            />
          )}
        </div>
      ))}
      {figureRemarks(check, read.figures).map((remark) => (
        <Text key={remark} size="sm" role="status">
          {remark}
        </Text>
      ))}
      {!isLeak && (
        <Text size="sm" c="dimmed">
          {book === null ? '' : `The spec book: ${pressureBand(book, draft.pressureUnit)}. `}A
          compression release lowers the figure: a low one alone condemns nothing.
        </Text>
      )}
    </Stack>
  );
}
