import {
  ActionIcon,
  Badge,
  Button,
  Group,
  NativeSelect,
  Stack,
  Text,
  TextInput,
} from '@mantine/core';
import { IconX } from '@tabler/icons-react';
import { type FormEvent, useState } from 'react';
import type { PartDossier } from '../../../shared/contract/parts/index.ts';
import {
  PART_NUMBER_KIND_LABELS,
  PART_NUMBER_KINDS,
  type PartNumberKind,
} from '../../../shared/work/parts/stock-words.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';

const KINDS = PART_NUMBER_KINDS.map((value) => ({ value, label: PART_NUMBER_KIND_LABELS[value] }));
const EMPTY = { kind: 'maker' as PartNumberKind, whose: '', number: '' };

/** Every other number that finds the part. */
export function NumbersCard({ dossier: { part, numbers } }: { dossier: PartDossier }) {
  const by = useBy();
  const [draft, setDraft] = useState(EMPTY);
  const add = useWrite(
    deskQuery.parts.addNumber.mutationOptions({
      onSuccess: () => setDraft((before) => ({ ...EMPTY, kind: before.kind })),
    }),
  );
  const drop = useWrite(deskQuery.parts.dropNumber.mutationOptions());
  const errors = fieldErrors(add.error);
  const set = (change: Partial<typeof draft>) => setDraft((before) => ({ ...before, ...change }));
  const send = (event: FormEvent) => {
    event.preventDefault();
    if (draft.number.trim() !== '') add.mutate({ by, partId: part.id, ...draft });
  };
  return (
    <Card title="Other numbers">
      <Stack gap="sm">
        {numbers.length === 0 && (
          <Text size="sm" c="dimmed">
            The part is found by its own number and barcode. Makers’ and suppliers’ numbers find it
            as well, once they are written here.
          </Text>
        )}
        {numbers.map(({ id, kind, whose, number }) => (
          <Group key={id} gap="xs" wrap="nowrap">
            <Text fw={600}>{number}</Text>
            <Badge variant="light" color="gray">
              {PART_NUMBER_KIND_LABELS[kind]}
            </Badge>
            <Text size="sm" c="dimmed" flex={1}>
              {whose}
            </Text>
            <ActionIcon
              variant="subtle"
              color="gray"
              aria-label={`Take ${number} off this part`}
              onClick={() => drop.mutate({ by, id })}
            >
              <IconX size={18} aria-hidden />
            </ActionIcon>
          </Group>
        ))}
        <form onSubmit={send} noValidate aria-label="Add a number">
          <Group align="flex-end" gap="xs">
            <NativeSelect
              size="md"
              label="Kind"
              flex="1 1 8.5rem"
              data={KINDS}
              value={draft.kind}
              onChange={(event) => {
                const kind = PART_NUMBER_KINDS.find((one) => one === event.currentTarget.value);
                if (kind !== undefined) set({ kind });
              }}
            />
            <TextInput
              label="Number"
              maxLength={60}
              flex="1 1 6rem"
              autoComplete="off"
              value={draft.number}
              error={errors.number}
              onChange={(event) => set({ number: event.currentTarget.value })}
            />
            <TextInput
              label="Whose"
              maxLength={120}
              flex="1 1 5rem"
              autoComplete="off"
              value={draft.whose}
              error={errors.whose}
              onChange={(event) => set({ whose: event.currentTarget.value })}
            />
            <Button type="submit" variant="light" loading={add.isPending}>
              Add
            </Button>
          </Group>
        </form>
        <RefusalAlert error={add.error ?? drop.error} />
      </Stack>
    </Card>
  );
}
