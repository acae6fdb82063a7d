import { Button, Checkbox, Group, Modal, Stack, TextInput } from '@mantine/core';
import { type SyntheticEvent, useState } from 'react';
import type { PurchaseOrderLineId } from '../../../shared/contract/ids.ts';
import type { PurchaseOrder } from '../../../shared/contract/parts/index.ts';
import { DateField } from '../../common/date-field.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { fieldErrors, RefusalAlert, refusalOf } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';

/** The supplier named another day for what is still to come. */
export function ExpectedDialog(props: { order: PurchaseOrder; onClose: () => void }) {
  const { order, onClose } = props;
  const by = useBy();
  const format = useFormat();
  const open = order.items.filter(({ owed }) => owed > 0);
  const [chosen, setChosen] = useState<ReadonlySet<PurchaseOrderLineId>>(
    new Set(open.length === 1 ? open.map(({ id }) => id) : []),
  );
  const [expectedOn, setExpectedOn] = useState<string | null>(null);
  const [unknown, setUnknown] = useState(false);
  const [reason, setReason] = useState('');
  const move = useWrite(deskQuery.parts.moveExpected.mutationOptions({ onSuccess: onClose }));
  const refusal = move.error === null ? null : refusalOf(move.error);
  const ofDay = refusal?.code === 'EXPECTED_IN_THE_PAST';
  const complete = chosen.size > 0 && (unknown || expectedOn !== null) && reason.trim() !== '';
  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    if (complete)
      move.mutate({
        by,
        orderId: order.id,
        lineIds: [...chosen],
        expectedOn: unknown ? null : expectedOn,
        reason,
      });
  };
  return (
    <Modal opened onClose={onClose} title="Expected on another day">
      <form onSubmit={send} aria-label="Expected on another day">
        <Stack gap="sm">
          {open.map(({ id, part, jobCode, expectedOn: day }, place) => (
            <Checkbox
              key={id}
              data-autofocus={place === 0 && open.length > 1 ? true : undefined}
              label={`${part.number}, ${part.description}${jobCode === '' ? '' : `, for ${jobCode}`}`}
              description={
                day === null ? 'Nobody knows when' : `Expected so far on ${format.date(day)}`
              }
              checked={chosen.has(id)}
              onChange={(event) => {
                const after = new Set(chosen);
                if (event.currentTarget.checked) after.add(id);
                else after.delete(id);
                setChosen(after);
              }}
            />
          ))}
          <DateField
            label="Expected on"
            data-autofocus={open.length === 1 ? true : undefined}
            required={!unknown}
            disabled={unknown}
            value={expectedOn}
            onChange={setExpectedOn}
            error={ofDay ? refusal.message : undefined}
          />
          <Checkbox
            label="Nobody knows when"
            checked={unknown}
            onChange={(event) => {
              setUnknown(event.currentTarget.checked);
              if (event.currentTarget.checked) setExpectedOn(null);
            }}
          />
          <TextInput
            label="Why"
            description="What the supplier said"
            required
            maxLength={200}
            value={reason}
            error={fieldErrors(move.error).reason}
            onChange={(event) => setReason(event.currentTarget.value)}
          />
          {!ofDay && <RefusalAlert error={move.error} brief />}
          <Group justify="flex-end">
            <Button variant="default" onClick={onClose}>
              Cancel
            </Button>
            <Button type="submit" loading={move.isPending} disabled={!complete}>
              Note this day
            </Button>
          </Group>
        </Stack>
      </form>
    </Modal>
  );
}
