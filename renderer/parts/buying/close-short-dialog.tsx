import { Button, Checkbox, Group, Modal, Stack, TextInput } from '@mantine/core';
import { type SyntheticEvent, useState } from 'react';
import type { PurchaseOrderLineId } from '../../../shared/contract/ids.ts';
import type { PurchaseOrder } from '../../../shared/contract/parts/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { useAmount } from './use-amount.ts';

/** Gives up what is still to come of some lines. */
export function CloseShortDialog(props: { order: PurchaseOrder; onClose: () => void }) {
  const { order, onClose } = props;
  const by = useBy();
  const amount = useAmount();
  const open = order.items.filter(({ owed }) => owed > 0);
  const [kept, setKept] = useState<ReadonlySet<PurchaseOrderLineId>>(new Set());
  const [reason, setReason] = useState('');
  const close = useWrite(deskQuery.parts.closeShort.mutationOptions({ onSuccess: onClose }));
  const errors = fieldErrors(close.error);
  const lineIds = open.filter(({ id }) => !kept.has(id)).map(({ id }) => id);
  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    if (lineIds.length > 0) close.mutate({ by, orderId: order.id, lineIds, reason });
  };
  return (
    <Modal opened onClose={onClose} title="Wait for these no longer">
      <form onSubmit={send}>
        <Stack gap="sm">
          {open.map(({ id, part, owed, jobCode }) => (
            <Checkbox
              key={id}
              label={`${part.number}, ${part.description}: ${amount(owed, part.unit)}${jobCode === '' ? '' : `, for ${jobCode}`}`}
              checked={!kept.has(id)}
              onChange={(event) => {
                const after = new Set(kept);
                if (event.currentTarget.checked) after.delete(id);
                else after.add(id);
                setKept(after);
              }}
            />
          ))}
          <TextInput
            label="Why"
            description="What the supplier said, or what changed"
            required
            data-autofocus
            maxLength={200}
            value={reason}
            error={errors.reason}
            onChange={(event) => setReason(event.currentTarget.value)}
          />
          <RefusalAlert error={close.error} />
          <Group justify="flex-end">
            <Button variant="default" onClick={onClose}>
              Go on waiting
            </Button>
            <Button
              type="submit"
              loading={close.isPending}
              disabled={lineIds.length === 0 || reason.trim() === ''}
            >
              Wait no longer
            </Button>
          </Group>
        </Stack>
      </form>
    </Modal>
  );
}
