import {
  Button,
  Group,
  Modal,
  SegmentedControl,
  Stack,
  Table,
  Text,
  TextInput,
} from '@mantine/core';
import { type FormEvent, useState } from 'react';
import type { JobId, PartId } from '../../../shared/contract/ids.ts';
import type { PartDossier } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useShop } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { JobField } from '../job-field.tsx';

type Goes = 'shelf' | 'job' | 'nowhere';

const GOES: { value: Goes; label: string }[] = [
  { value: 'shelf', label: 'Shelf' },
  { value: 'job', label: 'Job' },
  { value: 'nowhere', label: 'Not in it' },
];

/** Opens one kit: what becomes of each piece is said before. */
export function OpenKitDialog(props: { dossier: PartDossier; onClose: () => void }) {
  const { part, pieces } = props.dossier;
  const by = useBy();
  const { locale } = useShop();
  const [jobId, setJobId] = useState<JobId | null>(null);
  const [goes, setGoes] = useState<ReadonlyMap<PartId, Goes>>(new Map());
  const [reason, setReason] = useState('');
  const open = useWrite(deskQuery.parts.openKit.mutationOptions({ onSuccess: props.onClose }));
  const whither = (id: PartId): Goes => goes.get(id) ?? 'shelf';
  const toJob = pieces.filter(({ id }) => whither(id) === 'job');
  const noJob = toJob.length > 0 && jobId === null;
  const send = (event: FormEvent) => {
    event.preventDefault();
    if (noJob) return;
    open.mutate({
      by,
      kitId: part.id,
      jobId,
      reason,
      without: pieces.filter(({ id }) => whither(id) === 'nowhere').map(({ id }) => id),
      toJob: toJob.map(({ id, quantity }) => ({ partId: id, quantity })),
    });
  };
  return (
    <Modal opened onClose={props.onClose} title={`Open a kit: ${part.number}`} size="lg">
      <form onSubmit={send} noValidate aria-label="Open a kit">
        <Stack gap="sm">
          <Text size="sm">
            One kit leaves the shelf, which holds {formatQuantity(part.onHand, locale)} {part.unit}.
            Its pieces come onto the shelf for their share of what it is worth.
          </Text>
          <JobField
            label="For the job, if it is opened for one"
            value={jobId}
            onChange={setJobId}
            error={noJob ? 'Say which job the pieces go to.' : undefined}
          />
          <Table>
            <Table.Thead>
              <Table.Tr>
                <Table.Th>Piece</Table.Th>
                <Table.Th>Goes to</Table.Th>
              </Table.Tr>
            </Table.Thead>
            <Table.Tbody>
              {pieces.map(({ id, number, description, quantity, unit }) => (
                <Table.Tr key={id}>
                  <Table.Td>
                    {formatQuantity(quantity, locale)} {unit} {number} {description}
                  </Table.Td>
                  <Table.Td>
                    <SegmentedControl
                      aria-label={`Where ${number} goes`}
                      data={GOES}
                      value={whither(id)}
                      onChange={(next) =>
                        setGoes((before) =>
                          new Map(before).set(
                            id,
                            GOES.find(({ value }) => value === next)?.value ?? 'shelf',
                          ),
                        )
                      }
                    />
                  </Table.Td>
                </Table.Tr>
              ))}
            </Table.Tbody>
          </Table>
          <TextInput
            label="Reason or note"
            maxLength={300}
            value={reason}
            onChange={(event) => setReason(event.currentTarget.value)}
          />
          <RefusalAlert error={open.error} />
          <Group justify="flex-end">
            <Button type="submit" loading={open.isPending}>
              Open it
            </Button>
          </Group>
        </Stack>
      </form>
    </Modal>
  );
}
