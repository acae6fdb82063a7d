import { ActionIcon, Button, Group, NumberInput, Select, Stack, Table } from '@mantine/core';
import { IconX } from '@tabler/icons-react';
import { useMutation, useQuery } from '@tanstack/react-query';
import { liesIn } from '../../../shared/work/parts/bins.ts';
import { desk, deskQuery } from '../../common/desk.ts';
import { Empty } from '../../common/page.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { Sheet } from '../../common/sheet.tsx';
import { PartField } from '../part-field.tsx';
import { MOST_COPIES, oneForEach, type Wanted, withParts } from './label-list.ts';
import classes from './labels.module.css';

const MOST_PARTS = 500;
/** A bin's name that no bin has stands for parts without one. */
const NO_BIN = '\u0000';

interface ChosenPartsProps {
  list: readonly Wanted[];
  onChange: (change: (list: readonly Wanted[]) => Wanted[]) => void;
  onClear: () => void;
}

/** The parts that labels are printed for, each with its copies. */
export function ChosenParts({ list, onChange, onClear }: ChosenPartsProps) {
  const bins = useQuery(deskQuery.parts.binsToCount.queryOptions({ input: {} }));
  const add = useMutation({
    mutationFn: async (from: { partId: string } | { bin: string }) => {
      if ('partId' in from) return [(await desk.parts.part({ id: from.partId })).part];
      const found = await desk.parts.find({ text: from.bin, limit: 1000 });
      return found.filter(({ bin }) => liesIn(bin, from.bin)).slice(0, MOST_PARTS);
    },
    onSuccess: (parts) => onChange((before) => withParts(before, parts)),
  });
  return (
    <Stack gap="sm">
      <Group align="flex-start" grow>
        <PartField
          key={`after ${list.length}`}
          label="Add a part"
          value={null}
          onChange={(partId) => partId !== null && add.mutate({ partId })}
        />
        <Select
          label="Add all of a bin or rack"
          placeholder="Choose a bin"
          searchable
          value={null}
          data={(bins.data ?? []).map(({ bin, parts }) => ({
            value: bin === '' ? NO_BIN : bin,
            label: `${bin === '' ? 'No bin' : bin} · ${parts} ${parts === 1 ? 'part' : 'parts'}`,
          }))}
          onChange={(bin) => bin !== null && add.mutate({ bin: bin === NO_BIN ? '' : bin })}
        />
      </Group>
      <RefusalAlert error={add.error} />
      {list.length === 0 ? (
        <Empty
          title="No part is chosen"
          hint="Add parts one by one, or all that belong in one bin."
        />
      ) : (
        <>
          <ChosenTable list={list} onChange={onChange} />
          <Group justify="flex-end" gap="xs">
            <Button variant="default" onClick={() => onChange(oneForEach)}>
              One for each on hand
            </Button>
            <Button variant="default" onClick={onClear}>
              Clear the list
            </Button>
          </Group>
        </>
      )}
    </Stack>
  );
}

function ChosenTable({ list, onChange }: Pick<ChosenPartsProps, 'list' | 'onChange'>) {
  return (
    <Sheet>
      <Table className={classes.list} verticalSpacing={6}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Number</Table.Th>
            <Table.Th>Part</Table.Th>
            <Table.Th>Bin</Table.Th>
            <Table.Th>Labels</Table.Th>
            <Table.Th>
              <span className={classes.hidden}>Take off the list</span>
            </Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {list.map(({ partId, number, description, bin, copies }) => (
            <Table.Tr key={partId}>
              <Table.Td className={classes.number}>{number}</Table.Td>
              <Table.Td>{description}</Table.Td>
              <Table.Td>{bin === '' ? '–' : bin}</Table.Td>
              <Table.Td className={classes.copies}>
                <NumberInput
                  aria-label={`Labels of ${number}`}
                  min={1}
                  max={MOST_COPIES}
                  clampBehavior="strict"
                  allowDecimal={false}
                  value={copies}
                  onChange={(value) =>
                    typeof value === 'number' &&
                    value >= 1 &&
                    onChange((before) =>
                      before.map((each) =>
                        each.partId === partId ? { ...each, copies: value } : each,
                      ),
                    )
                  }
                />
              </Table.Td>
              <Table.Td>
                <ActionIcon
                  variant="subtle"
                  color="gray"
                  size={36}
                  aria-label={`Take ${number} off the list`}
                  onClick={() =>
                    onChange((before) => before.filter((each) => each.partId !== partId))
                  }
                >
                  <IconX size={18} aria-hidden />
                </ActionIcon>
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Sheet>
  );
}
