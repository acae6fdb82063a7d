import { Modal, Stack, Text, TextInput } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import type { JobId } from '../../../shared/contract/ids.ts';
import type { BilledPart } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { SaveOrCancel } from '../../common/save-or-cancel.tsx';
import { useShop } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { QuantityInput } from '../quantity-input.tsx';

interface FromElsewhereProps {
  jobId: JobId;
  /** The part in question; null while there is none. */
  billed: BilledPart | null;
  onClose: () => void;
}

/** A billed part did not come off the shelf: where from is written down, and it is looked for no more. */
export function FromElsewhereDialog({ jobId, billed, onClose }: FromElsewhereProps) {
  return (
    <Modal opened={billed !== null} onClose={onClose} title="Not from stock">
      {billed !== null && <FromElsewhereForm jobId={jobId} billed={billed} onDone={onClose} />}
    </Modal>
  );
}

function FromElsewhereForm(props: { jobId: JobId; billed: BilledPart; onDone: () => void }) {
  const { jobId, billed, onDone } = props;
  const by = useBy();
  const { locale } = useShop();
  const [quantity, setQuantity] = useState<number | null>(billed.quantity);
  const [reason, setReason] = useState('');
  const save = useWrite(deskQuery.parts.fromElsewhere.mutationOptions({ onSuccess: onDone }));
  const errors = fieldErrors(save.error);
  const { part } = billed;
  const send = (event: FormEvent) => {
    event.preventDefault();
    if (quantity === null || quantity === 0) return;
    save.mutate({ by, jobId, partId: part.id, quantity, reason });
  };
  return (
    <form onSubmit={send} noValidate aria-label="Not from stock">
      <Stack gap="sm">
        <Text>
          {part.number} {part.description}: {formatQuantity(billed.quantity, locale)} {part.unit}{' '}
          billed and not issued.
        </Text>
        <QuantityInput
          label="Quantity"
          unit={part.unit}
          value={quantity}
          onChange={setQuantity}
          error={errors.quantity ?? (quantity === null ? 'Say how many.' : undefined)}
        />
        <TextInput
          label="Where it came from"
          description="Brought by the customer, bought on the way, taken from another machine."
          required
          data-autofocus
          maxLength={300}
          value={reason}
          error={errors.reason}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        <RefusalAlert error={save.error} />
        <SaveOrCancel saving={save.isPending} onCancel={onDone} />
      </Stack>
    </form>
  );
}
