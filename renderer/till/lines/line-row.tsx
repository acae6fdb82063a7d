import { ActionIcon, Group, NativeSelect, Text, TextInput } from '@mantine/core';
import { IconAdjustmentsHorizontal, IconTrash } from '@tabler/icons-react';
import { type KeyboardEvent, useId, useRef, useState } from 'react';
import type { Part } from '../../../shared/contract/parts/index.ts';
import { editableMoney, isByRule } from '../../../shared/money/index.ts';
import { LINE_KIND_LABELS, LINE_KINDS, type LineKind } from '../../../shared/work/vocabulary.ts';
import { useMoney } from '../../common/shop.tsx';
import { withUnitPrice } from './change-line.ts';
import { DescriptionCell } from './description-cell.tsx';
import {
  CELLS,
  type Cell,
  type DraftLine,
  type LineReading,
  type MoneyRules,
  withKind,
} from './draft-line.ts';
import { cellName } from './grid-focus.ts';
import { LineDetails } from './line-details.tsx';
import { LineSummary } from './line-summary.tsx';
import classes from './lines-grid.module.css';
import { MarginWords } from './margin-words.tsx';
import { useMarginShown } from './use-margin-shown.ts';

interface LineRowProps {
  line: DraftLine;
  position: number;
  reading: LineReading;
  rules: MoneyRules;
  /** Also say what is missing in cells that are still empty. */
  showMissing: boolean;
  onChange: (line: DraftLine) => void;
  onDelete: () => void;
  onEnter: (cell: Cell, step: 1 | -1) => void;
  onPart: (part: Part) => void;
  onCoreBack: () => void;
}

const KINDS = LINE_KINDS.map((value) => ({ value, label: LINE_KIND_LABELS[value] }));
const kindNamed = (value: string): LineKind =>
  LINE_KINDS.find((kind) => kind === value) ?? 'labour';

/** One line of the bill, a cell for each of its fields. */
export function LineRow(props: LineRowProps) {
  const { line, position, reading, rules, showMissing, onChange, onDelete, onEnter } = props;
  const money = useMoney();
  const detailsId = useId();
  const toggle = useRef<HTMLButtonElement>(null);
  const [open, setOpen] = useState(false);
  const [showMargin] = useMarginShown();
  const byRule = isByRule(line.behind);
  const problems = CELLS.filter(
    (cell) => reading.problems[cell] !== undefined && (showMissing || line[cell].trim() !== ''),
  );
  const problemOf = (name: Cell) => (problems.includes(name) ? reading.problems[name] : undefined);
  const cell = (name: Cell, words: string) => ({
    'aria-label': `Line ${position}, ${words}`,
    'data-cell': cellName(line.key, name),
    error: problemOf(name),
  });

  const keys = (event: KeyboardEvent<HTMLTableRowElement>) => {
    if (event.defaultPrevented || event.nativeEvent.isComposing) return;
    const name = CELLS.find((each) =>
      (event.target as HTMLElement).dataset.cell?.endsWith(`/${each}`),
    );
    if (name === undefined) return;
    if (event.key === 'Enter') {
      event.preventDefault();
      onEnter(name, event.shiftKey ? -1 : 1);
    }
    if (event.key === 'Delete' && (event.ctrlKey || event.metaKey)) {
      event.preventDefault();
      onDelete();
    }
  };

  return (
    <>
      <tr onKeyDown={keys} className={classes.row}>
        <td>
          <NativeSelect
            {...cell('kind', 'kind')}
            size="md"
            classNames={{ input: classes.kindCell, error: classes.spoken }}
            data={KINDS}
            value={line.kind}
            onChange={(event) =>
              onChange(withKind(line, kindNamed(event.currentTarget.value), rules))
            }
          />
        </td>
        <td>
          <DescriptionCell
            line={line}
            label={`Line ${position}, description`}
            problem={problemOf('description')}
            onDescribe={(description) =>
              onChange(
                description === ''
                  ? { ...line, description, partId: null, partNumber: '' }
                  : { ...line, description },
              )
            }
            onPart={props.onPart}
            onForgetPart={() => onChange({ ...line, partId: null, partNumber: '' })}
            onEnter={() => onEnter('description', 1)}
          />
          {!open && <LineSummary line={line} />}
        </td>
        <td>
          <TextInput
            {...cell('quantity', 'quantity')}
            classNames={{ input: classes.figureCell, error: classes.spoken }}
            inputMode="decimal"
            autoComplete="off"
            value={line.quantity}
            readOnly={byRule}
            onChange={(event) => onChange({ ...line, quantity: event.currentTarget.value })}
          />
        </td>
        <td>
          <TextInput
            {...cell('unit', 'unit')}
            classNames={{ input: classes.cell, error: classes.spoken }}
            autoComplete="off"
            maxLength={12}
            value={line.unit}
            onChange={(event) => onChange({ ...line, unit: event.currentTarget.value })}
          />
        </td>
        <td>
          <TextInput
            {...cell('unitPrice', 'unit price')}
            classNames={{ input: classes.figureCell, error: classes.spoken }}
            inputMode="decimal"
            autoComplete="off"
            value={
              byRule
                ? editableMoney(reading.line?.unitPrice ?? 0, rules.currency, rules.locale)
                : line.unitPrice
            }
            readOnly={byRule}
            onChange={(event) => onChange(withUnitPrice(line, event.currentTarget.value))}
          />
        </td>
        <td className={classes.amount}>{reading.amount === null ? '–' : money(reading.amount)}</td>
        <td>
          <Group gap={0} wrap="nowrap" h={42}>
            <ActionIcon
              ref={toggle}
              variant={open ? 'light' : 'subtle'}
              color={open ? undefined : 'gray'}
              size={36}
              aria-label={`Line ${position}, details`}
              aria-expanded={open}
              aria-controls={open ? detailsId : undefined}
              onClick={() => setOpen(!open)}
            >
              <IconAdjustmentsHorizontal size={18} aria-hidden />
            </ActionIcon>
            <ActionIcon
              variant="subtle"
              color="gray"
              size={36}
              aria-label={`Delete line ${position}`}
              onClick={onDelete}
            >
              <IconTrash size={18} aria-hidden />
            </ActionIcon>
          </Group>
        </td>
      </tr>
      {open ? (
        <tr
          id={detailsId}
          onKeyDown={(event) => {
            if (event.key !== 'Escape') return;
            setOpen(false);
            toggle.current?.focus();
          }}
        >
          <td colSpan={7}>
            <LineDetails
              line={line}
              position={position}
              reading={reading}
              rules={rules}
              showMargin={showMargin}
              onChange={onChange}
              onCoreBack={props.onCoreBack}
            />
          </td>
        </tr>
      ) : (
        showMargin &&
        reading.margin !== null && (
          <tr>
            <td colSpan={7}>
              <Text size="xs" c="dimmed" ta="end" pe={84}>
                <MarginWords margin={reading.margin} />
              </Text>
            </td>
          </tr>
        )
      )}
      {problems.length > 0 && (
        <tr>
          <td colSpan={7} aria-hidden>
            {problems.map((name) => (
              <Text key={name} size="sm" c="var(--mantine-color-error)">
                Line {position}: {reading.problems[name]}
              </Text>
            ))}
          </td>
        </tr>
      )}
    </>
  );
}
