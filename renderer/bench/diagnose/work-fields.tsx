import { Button, NativeSelect, Stack, TextInput } from '@mantine/core';
import { IconPlus } from '@tabler/icons-react';
import type { WorkWanted } from '../../../shared/work/bench/diagnosis.ts';
import { LINE_KIND_LABELS } from '../../../shared/work/vocabulary.ts';
import classes from './diagnose.module.css';

const KINDS = ['labour', 'part', 'outside'] as const;
const MOST = 8;
const EMPTY: WorkWanted = { kind: 'labour', description: '' };

/** What it takes, as it would stand on the estimate; a line without words is left out. */
export function WorkFields({
  work,
  onChange,
}: {
  readonly work: readonly WorkWanted[];
  readonly onChange: (work: readonly WorkWanted[]) => void;
}) {
  const rows = work.length === 0 ? [EMPTY] : work;
  const numbered = rows.map((row, place) => ({ row, place }));
  const change = (at: number, part: Partial<WorkWanted>) =>
    onChange(rows.map((row, index) => (index === at ? { ...row, ...part } : row)));
  return (
    <fieldset className={classes.work}>
      <legend>What it takes</legend>
      <Stack gap="xs" align="stretch">
        {numbered.map(({ row, place }) => (
          <div key={place} className={classes.workLine}>
            <NativeSelect
              aria-label={`Kind of line ${place + 1}`}
              data={KINDS.map((value) => ({ value, label: LINE_KIND_LABELS[value] }))}
              value={row.kind}
              onChange={(event) => {
                const kind = KINDS.find((each) => each === event.currentTarget.value);
                if (kind !== undefined) change(place, { kind });
              }}
              classNames={{ input: classes.choice }}
            />
            <TextInput
              aria-label={`Line ${place + 1} for the estimate`}
              placeholder={place === 0 ? 'As it would stand on the estimate' : undefined}
              value={row.description}
              maxLength={200}
              onChange={(event) => change(place, { description: event.currentTarget.value })}
              classNames={{ input: classes.choice }}
            />
          </div>
        ))}
        {rows.length < MOST && (
          <Button
            variant="subtle"
            size="md"
            className={classes.another}
            leftSection={<IconPlus size={18} aria-hidden />}
            onClick={() => onChange([...rows, EMPTY])}
          >
            Another line
          </Button>
        )}
      </Stack>
    </fieldset>
  );
}
