import { Button, Checkbox, Group, Radio, Stack, TextInput } from '@mantine/core';
import { IconArrowBackUp, IconRefresh } from '@tabler/icons-react';
import { type ReactNode, type SyntheticEvent, useState } from 'react';
import type { BackUpSource, FoundBackUp, LongWork } from '../../../shared/contract/back-ups.ts';
import { StaffId } from '../../../shared/contract/ids.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert, refusalOf } from '../../common/refusal.tsx';
import { useWrite } from '../../common/use-write.ts';

interface ConfirmBringBackProps {
  by: StaffId | null;
  from: BackUpSource;
  found: FoundBackUp;
  onBegun: (work: LongWork, by: StaffId) => void;
  onCheckAgain: () => void;
  /** The way to another file, beside the button. */
  otherFile: ReactNode;
}

/** Who, why, and a word that it is meant. */
export function ConfirmBringBack(props: ConfirmBringBackProps) {
  const { by, from, found, onBegun, onCheckAgain, otherFile } = props;
  const [only] = found.owners.length === 1 ? found.owners : [];
  const [person, setPerson] = useState<StaffId | null>(by ?? only?.id ?? null);
  const [reason, setReason] = useState('');
  const [meant, setMeant] = useState(false);
  const bring = useWrite(
    deskQuery.office.bringBack.mutationOptions({
      onSuccess: (work, input) => onBegun(work, StaffId.parse(input.by)),
    }),
  );
  const errors = fieldErrors(bring.error);
  const movedOn = bring.error !== null && refusalOf(bring.error).code === 'STORE_MOVED_ON';
  const submit = (event: SyntheticEvent) => {
    event.preventDefault();
    if (person === null || !meant) return;
    const { sha256, lost } = found;
    bring.mutate({
      by: person,
      from,
      sha256,
      storeEntries: lost.storeEntries,
      reason,
      wait: false,
    });
  };
  return (
    <Card title="Bring it back">
      <form onSubmit={submit}>
        <Stack>
          {by === null && (
            <Radio.Group
              size="md"
              label="Who are you?"
              description="The owners on the staff list of this back-up"
              value={person}
              onChange={(chosen) => setPerson(StaffId.parse(chosen))}
              required
            >
              <Stack gap={6} mt={6}>
                {found.owners.map(({ id, name }) => (
                  <Radio key={id} value={id} label={name} />
                ))}
              </Stack>
            </Radio.Group>
          )}
          <TextInput
            label="Why"
            description="It stands in the journal"
            required
            maxLength={300}
            value={reason}
            error={errors.reason}
            onChange={(event) => setReason(event.currentTarget.value)}
          />
          <Checkbox
            checked={meant}
            onChange={(event) => setMeant(event.currentTarget.checked)}
            label={
              by === null
                ? 'This is my shop, and it is to be opened here.'
                : 'What is in the shop now makes way for this back-up. It is backed up first.'
            }
          />
          <RefusalAlert error={bring.error} />
          <Group>
            {movedOn ? (
              <Button leftSection={<IconRefresh size={20} aria-hidden />} onClick={onCheckAgain}>
                Check it again
              </Button>
            ) : (
              <Button
                type="submit"
                leftSection={<IconArrowBackUp size={20} aria-hidden />}
                disabled={person === null || !meant || reason.trim() === ''}
                loading={bring.isPending}
              >
                Bring this shop back
              </Button>
            )}
            {otherFile}
          </Group>
        </Stack>
      </form>
    </Card>
  );
}
