import { Autocomplete, Button, Group, Modal, Stack, Text, Textarea } from '@mantine/core';
import { notifications } from '@mantine/notifications';
import { type SyntheticEvent, useState } from 'react';
import type { Bundle, LineInput } from '../../../shared/contract/till/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';

interface KeepBundleProps {
  lines: readonly LineInput[];
  bundles: readonly Bundle[];
  onClose: () => void;
}

/** Keeps the typed lines under a name, in place of those that had it before. */
export function KeepBundle({ lines, bundles, onClose }: KeepBundleProps) {
  const by = useBy();
  const [name, setName] = useState('');
  const [note, setNote] = useState('');
  const former = bundles.find((bundle) => bundle.name === name.trim());
  const save = useWrite(
    deskQuery.till.saveBundle.mutationOptions({
      onSuccess: (bundle) => {
        notifications.show({ color: 'green', message: `Kept as ‘${bundle.name}’.` });
        onClose();
      },
    }),
  );
  const errors = fieldErrors(save.error);
  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    save.mutate({ by, id: former?.id ?? null, name, note, lines: [...lines] });
  };
  return (
    <Modal opened onClose={onClose} title="Keep these lines as a bundle">
      <form onSubmit={send}>
        <Stack gap="sm">
          <Text size="sm">
            {lines.length} {lines.length === 1 ? 'line' : 'lines'}. Labour at a rate of the shop and
            parts from the shelf come back at the prices of the day.
          </Text>
          <Autocomplete
            size="md"
            label="Name"
            data-autofocus
            required
            maxLength={120}
            placeholder="Valve job, single cylinder"
            data={bundles.map((bundle) => bundle.name)}
            value={name}
            error={errors.name}
            onChange={setName}
          />
          <Textarea
            label="Note for the shop"
            maxLength={500}
            autosize
            minRows={1}
            value={note}
            onChange={(event) => setNote(event.currentTarget.value)}
          />
          {former !== undefined && (
            <Text size="sm" fw={500}>
              Takes the place of the {former.lines.length} lines that have this name now.
            </Text>
          )}
          <RefusalAlert error={save.error} />
          <Group justify="flex-end" gap="xs">
            <Button variant="default" onClick={onClose}>
              Not now
            </Button>
            <Button type="submit" loading={save.isPending}>
              {former === undefined ? 'Keep them' : 'Put these in their place'}
            </Button>
          </Group>
        </Stack>
      </form>
    </Modal>
  );
}
