import { Button, Group, Modal, Stack, Text, TextInput } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import type { JobId } from '../../../shared/contract/ids.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useShop } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { QuantityInput } from '../quantity-input.tsx';
import type { WithJob } from './job-parts-table.tsx';

interface TakeBackProps {
  jobId: JobId;
  /** What is taken back; null while nothing is. */
  held: WithJob | null;
  onClose: () => void;
}

/** An unused part goes back onto the shelf, at what it was issued at. */
export function TakeBackDialog({ jobId, held, onClose }: TakeBackProps) {
  return (
    <Modal opened={held !== null} onClose={onClose} title="Take an unused part back">
      {held !== null && <TakeBackForm jobId={jobId} held={held} onDone={onClose} />}
    </Modal>
  );
}

function TakeBackForm({
  jobId,
  held: { part, withJob },
  onDone,
}: {
  jobId: JobId;
  held: WithJob;
  onDone: () => void;
}) {
  const by = useBy();
  const { locale } = useShop();
  const [quantity, setQuantity] = useState<number | null>(withJob);
  const [reason, setReason] = useState('');
  const back = useWrite(deskQuery.parts.takeBack.mutationOptions({ onSuccess: onDone }));
  const errors = fieldErrors(back.error);
  const send = (event: FormEvent) => {
    event.preventDefault();
    if (quantity === null || quantity === 0) return;
    back.mutate({ by, jobId, partId: part.id, quantity, reason });
  };
  return (
    <form onSubmit={send} noValidate aria-label="Take an unused part back">
      <Stack gap="sm">
        <Text>
          {part.number} {part.description}: {formatQuantity(withJob, locale)} {part.unit} with this
          job. It goes back onto the shelf at what it was issued at, and the job is not promised it
          again.
        </Text>
        <QuantityInput
          label="Quantity"
          unit={part.unit}
          data-autofocus
          value={quantity}
          onChange={setQuantity}
          error={errors.quantity ?? (quantity === null ? 'Say how many.' : undefined)}
        />
        <TextInput
          label="Reason or note"
          maxLength={300}
          value={reason}
          error={errors.reason}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        <RefusalAlert error={back.error} />
        <Group justify="flex-end">
          <Button type="submit" loading={back.isPending}>
            Take it back
          </Button>
        </Group>
      </Stack>
    </form>
  );
}
