import { Button, Group, Modal, Stack, Table, Text } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { useRef, useState } from 'react';
import { useNavigate } from 'react-router';
import type { PartId } from '../../../shared/contract/ids.ts';
import type { CountLine, Part, StockCount } from '../../../shared/contract/parts/index.ts';
import { liesIn } from '../../../shared/work/parts/bins.ts';
import { deskQuery } from '../../common/desk.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { CountEntry } from './count-entry.tsx';
import classes from './counts.module.css';
import { ScanPart } from './scan-part.tsx';

type SheetLine = Pick<CountLine, 'partId' | 'number' | 'description' | 'unit' | 'bin' | 'counted'>;

const asLine = ({ id, number, description, unit, bin }: Part): SheetLine => ({
  partId: id,
  number,
  description,
  unit,
  bin,
  counted: null,
});

/** The sheet of a bin that is being counted: each part's figure, and never what it should be. */
export function CountSheet({ count }: { count: StockCount }) {
  const by = useBy();
  const [strays, setStrays] = useState<readonly Part[]>([]);
  const fields = useRef(new Map<PartId, HTMLInputElement>());
  const [wanted, setWanted] = useState<PartId | null>(null);
  const close = useWrite(deskQuery.parts.closeCount.mutationOptions());
  const known = new Set<string>(count.lines.map(({ partId }) => partId));
  const lines: SheetLine[] = [
    ...count.lines,
    ...strays.filter(({ id }) => !known.has(id)).map(asLine),
  ];
  const missing = count.lines.filter(({ counted }) => counted === null).length;

  const goTo = (partId: PartId | undefined) =>
    partId !== undefined && fields.current.get(partId)?.focus();
  const scanned = (part: Part) => {
    if (lines.some(({ partId }) => partId === part.id)) goTo(part.id);
    else {
      setStrays((before) => [...before, part]);
      setWanted(part.id);
    }
  };

  return (
    <Stack>
      <Group justify="space-between" align="flex-start">
        <ScanPart onScanned={scanned} />
        <Group gap="xs">
          <GiveUp count={count} />
          <Button loading={close.isPending} onClick={() => close.mutate({ by, countId: count.id })}>
            Close the count
          </Button>
        </Group>
      </Group>
      <RefusalAlert error={close.error} />
      <Text role="status" size="sm">
        {missing === 0
          ? 'Every part has a figure. Close the count to see what should be there.'
          : `${missing} ${missing === 1 ? 'part has' : 'parts have'} no figure yet. For what isn’t there write 0.`}
      </Text>
      <div className={classes.scroll}>
        <Table className={classes.counts} verticalSpacing={6}>
          <Table.Thead>
            <Table.Tr>
              <Table.Th>Number</Table.Th>
              <Table.Th>Part</Table.Th>
              <Table.Th>In the bin</Table.Th>
              <Table.Th>Standing</Table.Th>
            </Table.Tr>
          </Table.Thead>
          <Table.Tbody>
            {lines.map((line, index) => (
              <Table.Tr key={line.partId}>
                <Table.Td className={classes.number}>{line.number}</Table.Td>
                <Table.Td>
                  {line.description}
                  {line.bin !== count.bin && (
                    <Text size="xs" c="dimmed">
                      {placeWords(line.bin, count.bin)}
                    </Text>
                  )}
                </Table.Td>
                <Table.Td className={classes.entry}>
                  <CountEntry
                    countId={count.id}
                    line={line}
                    focused={line.partId === wanted}
                    field={(input) => {
                      if (input === null) fields.current.delete(line.partId);
                      else fields.current.set(line.partId, input);
                    }}
                    onNext={() => goTo(lines[index + 1]?.partId)}
                  />
                </Table.Td>
                <Table.Td>
                  {line.counted === null ? (
                    <Text span inherit c="dimmed">
                      Not counted
                    </Text>
                  ) : (
                    'Counted'
                  )}
                </Table.Td>
              </Table.Tr>
            ))}
          </Table.Tbody>
        </Table>
      </div>
    </Stack>
  );
}

/** Where a part of a rack lies, or where something out of place belongs. */
function placeWords(bin: string, counted: string): string {
  if (liesIn(bin, counted)) return `Bin ${bin}`;
  return bin === '' ? 'Has no bin' : `Belongs in ${bin}`;
}

function GiveUp({ count }: { count: StockCount }) {
  const by = useBy();
  const navigate = useNavigate();
  const [asked, ask] = useDisclosure(false);
  const drop = useWrite(
    deskQuery.parts.dropCount.mutationOptions({ onSuccess: () => navigate('/parts/counts') }),
  );
  return (
    <>
      <Button variant="default" onClick={ask.open}>
        Give up
      </Button>
      <Modal opened={asked} onClose={ask.close} title="Give up this count">
        <Stack>
          <Text>The figures are gone then; the shelf stays as it is.</Text>
          <RefusalAlert error={drop.error} />
          <Group justify="flex-end">
            <Button variant="default" onClick={ask.close} data-autofocus>
              Go on counting
            </Button>
            <Button
              color="red"
              loading={drop.isPending}
              onClick={() => drop.mutate({ by, countId: count.id })}
            >
              Give it up
            </Button>
          </Group>
        </Stack>
      </Modal>
    </>
  );
}
