import { Button, Group, Modal, SegmentedControl, Stack, Text, TextInput } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import type { PartName } from '../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../shared/money/index.ts';
import { deskQuery } from '../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { useShop } from '../common/shop.tsx';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';
import { QuantityInput } from './quantity-input.tsx';

/** Puts one shelf right by a difference that somebody can explain. */
export function PutRightDialog(props: { shelf: PartName | null; onClose: () => void }) {
  const { shelf, onClose } = props;
  return (
    <Modal opened={shelf !== null} onClose={onClose} title="Put a shelf right">
      {shelf !== null && <PutRightForm key={shelf.id} shelf={shelf} onDone={onClose} />}
    </Modal>
  );
}

function PutRightForm({ shelf, onDone }: { shelf: PartName; onDone: () => void }) {
  const by = useBy();
  const { locale } = useShop();
  const [way, setWay] = useState<'more' | 'fewer'>('more');
  const [quantity, setQuantity] = useState<number | null>(shelf.onHand < 0 ? -shelf.onHand : null);
  const [reason, setReason] = useState('');
  const [asked, setAsked] = useState(false);
  const right = useWrite(deskQuery.parts.putRight.mutationOptions({ onSuccess: onDone }));
  const errors = fieldErrors(right.error);
  const after = shelf.onHand + (way === 'more' ? 1 : -1) * (quantity ?? 0);
  const amount = (thousandths: number) =>
    `${thousandths < 0 ? '−' : ''}${formatQuantity(Math.abs(thousandths), locale)} ${shelf.unit}`;

  const send = (event: FormEvent) => {
    event.preventDefault();
    setAsked(true);
    if (quantity === null || quantity === 0 || reason.trim() === '') return;
    const difference = way === 'more' ? quantity : -quantity;
    right.mutate({ by, partId: shelf.id, difference, reason });
  };
  return (
    <form onSubmit={send} noValidate aria-label="Put a shelf right">
      <Stack gap="sm">
        <Text>
          {shelf.number} {shelf.description}: the movements say {amount(shelf.onHand)}.
        </Text>
        <SegmentedControl
          aria-label="What the bin holds"
          fullWidth
          data={[
            { value: 'more', label: 'There are more' },
            { value: 'fewer', label: 'There are fewer' },
          ]}
          value={way}
          onChange={(next) => setWay(next === 'more' ? 'more' : 'fewer')}
        />
        <QuantityInput
          label={way === 'more' ? 'More by' : 'Fewer by'}
          unit={shelf.unit}
          data-autofocus
          value={quantity}
          onChange={setQuantity}
          error={
            errors.difference ??
            (asked && (quantity === null || quantity === 0) ? 'Say how many.' : undefined)
          }
        />
        <TextInput
          label="Why"
          required
          description="Received and not written down, issued to the wrong job …"
          maxLength={300}
          value={reason}
          error={
            errors.reason ?? (asked && reason.trim() === '' ? 'Say why in a few words.' : undefined)
          }
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        <Text size="sm" fw={500}>
          On hand then: {amount(after)}
        </Text>
        <RefusalAlert error={right.error} />
        <Group justify="flex-end">
          <Button type="submit" loading={right.isPending}>
            Put it right
          </Button>
        </Group>
      </Stack>
    </form>
  );
}
