import { Button, Group, Kbd, Text } from '@mantine/core';
import { IconPlus } from '@tabler/icons-react';
import { useRef } from 'react';
import { flushSync } from 'react-dom';
import { BundleMenu } from './bundle-menu.tsx';
import { withBundle, withCore, withCoreBack } from './change-line.ts';
import {
  type Cell,
  type DraftLine,
  emptyLine,
  isBlank,
  type LineReading,
  type MoneyRules,
  withKind,
  withPart,
} from './draft-line.ts';
import { besideCell, focusCell } from './grid-focus.ts';
import { kindInWords } from './kind-in-words.ts';
import { LineRow } from './line-row.tsx';
import classes from './lines-grid.module.css';

interface LinesGridProps {
  lines: readonly DraftLine[];
  readings: readonly LineReading[];
  rules: MoneyRules;
  showMissing: boolean;
  /** Told what becomes of the lines as they stand when it is applied. */
  onChange: (change: (lines: readonly DraftLine[]) => DraftLine[]) => void;
  /** Enter on an empty last line: the list is done. */
  onDone: () => void;
}

const UNREAD: LineReading = {
  line: null,
  figures: null,
  amount: null,
  margin: null,
  problems: {},
};

/** The lines of a bill as a grid for the keyboard: Enter goes on, at the end of the last line it adds one. */
export function LinesGrid(props: LinesGridProps) {
  const { lines, readings, rules, showMissing, onChange, onDone } = props;
  const grid = useRef<HTMLTableElement>(null);
  const goTo = (key: number, cell: Cell) => focusCell(grid.current, key, cell);

  /** Lines whose kind nobody has chosen: it was that of the line above, and follows what is typed. */
  const fresh = useRef(new Set<DraftLine['key']>());

  const change = (changed: DraftLine) =>
    onChange((now) => now.map((line) => (line.key === changed.key ? inKind(line, changed) : line)));

  const inKind = (before: DraftLine, changed: DraftLine): DraftLine => {
    if (!fresh.current.has(changed.key)) return changed;
    if (before.kind !== changed.kind || changed.partId !== null) {
      fresh.current.delete(changed.key);
      return changed;
    }
    const kind = kindInWords(changed.description);
    return kind === null || kind === changed.kind ? changed : withKind(changed, kind, rules);
  };

  const add = () => {
    const line = emptyLine(lines, lines.at(-1)?.kind ?? 'labour', rules);
    fresh.current.add(line.key);
    flushSync(() => onChange((now) => [...now, line]));
    goTo(line.key, 'description');
  };

  const remove = (index: number, cell: Cell) => {
    const left = lines.toSpliced(index, 1);
    const rest = left.length > 0 ? left : [emptyLine(lines, 'labour', rules)];
    flushSync(() => onChange(() => rest));
    const neighbour = rest[Math.min(index, rest.length - 1)];
    if (neighbour !== undefined) goTo(neighbour.key, cell);
  };

  const enter = (index: number, cell: Cell, step: 1 | -1) => {
    const line = lines[index];
    if (line === undefined) return;
    const last = index === lines.length - 1;
    if (step === 1 && last && cell === 'description' && lines.length > 1 && isBlank(line, rules)) {
      flushSync(() => onChange((now) => now.slice(0, -1)));
      onDone();
      return;
    }
    const beside = besideCell(cell, step);
    if (beside !== null) goTo(line.key, beside);
    else if (step === 1 && last) add();
    else {
      const other = lines[index + step];
      if (other !== undefined) goTo(other.key, step === 1 ? 'kind' : 'unitPrice');
    }
  };

  return (
    <>
      <table className={classes.grid} ref={grid}>
        <caption className={classes.caption}>Lines of the estimate</caption>
        <thead>
          <tr>
            <th scope="col" className={classes.kind}>
              Kind
            </th>
            <th scope="col">Description</th>
            <th scope="col" className={classes.quantity}>
              Quantity
            </th>
            <th scope="col" className={classes.unit}>
              Unit
            </th>
            <th scope="col" className={classes.price}>
              Unit price
            </th>
            <th scope="col" className={classes.amountHead}>
              Amount
            </th>
            <td className={classes.delete} />
          </tr>
        </thead>
        <tbody>
          {lines.map((line, index) => (
            <LineRow
              key={line.key}
              line={line}
              position={index + 1}
              reading={readings[index] ?? UNREAD}
              rules={rules}
              showMissing={showMissing}
              onChange={change}
              onDelete={() => remove(index, 'description')}
              onEnter={(cell, step) => enter(index, cell, step)}
              onPart={(part) => {
                change(withPart(line, part, rules));
                onChange((now) => withCore(now, line.key, part, rules));
                goTo(line.key, 'quantity');
              }}
              onCoreBack={() => onChange((now) => withCoreBack(now, line))}
            />
          ))}
        </tbody>
      </table>
      <Group gap="md" mt="xs">
        <Button
          variant="light"
          size="sm"
          leftSection={<IconPlus size={18} aria-hidden />}
          onClick={add}
        >
          Add a line
        </Button>
        <BundleMenu
          lines={readings.flatMap(({ line }) => (line === null ? [] : [line]))}
          onTake={(bundle) => onChange((now) => withBundle(now, bundle, rules))}
        />
        <Text size="xs" c="dimmed">
          <Kbd size="xs">Enter</Kbd> next cell, and a new line after the last;{' '}
          <Kbd size="xs">Shift Enter</Kbd> back; <Kbd size="xs">Ctrl Delete</Kbd> deletes the line.
        </Text>
      </Group>
    </>
  );
}
