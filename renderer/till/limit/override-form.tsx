import { Button, Group, Modal, Stack, Text, Textarea } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import type { BillAhead } from '../../../shared/contract/till/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';

/** Where the owner lets a bill pass what was approved, in writing. */
export function OverrideForm({ ahead, onClose }: { ahead: BillAhead; onClose: () => void }) {
  const by = useBy();
  const money = useMoney();
  const [amount, setAmount] = useState<number | null>(ahead.total);
  const [reason, setReason] = useState('');
  const [asked, setAsked] = useState(false);
  const override = useWrite(deskQuery.till.overrideLimit.mutationOptions({ onSuccess: onClose }));
  const errors = fieldErrors(override.error);
  const tooLittle = amount === null || amount <= ahead.limit;
  const unexplained = reason.trim().length < 5;

  const send = (event: FormEvent) => {
    event.preventDefault();
    setAsked(true);
    if (tooLittle || unexplained) return;
    override.mutate({ by, jobId: ahead.jobId, amount, reason });
  };

  return (
    <Modal opened onClose={onClose} title="Let the bill pass what was approved?">
      <form onSubmit={send} noValidate>
        <Stack gap="sm">
          <Text size="sm">
            The customer has approved {money(ahead.approved)}. This holds until they are asked
            again; it stands in the journal under your name. Local law decides whether the
            difference may be charged at all.
          </Text>
          <MoneyInput
            label="The bill may come to"
            value={amount}
            onChange={setAmount}
            error={
              errors.amount ??
              (asked && tooLittle ? `Give an amount above ${money(ahead.limit)}.` : undefined)
            }
          />
          <Textarea
            label="Reason"
            autosize
            minRows={2}
            maxLength={500}
            data-autofocus
            value={reason}
            onChange={(event) => setReason(event.currentTarget.value)}
            error={
              errors.reason ??
              (asked && unexplained ? 'Give the reason in a few words; it is kept.' : undefined)
            }
          />
          <RefusalAlert error={override.error} brief />
          <Group justify="flex-end" gap="xs">
            <Button variant="default" onClick={onClose}>
              Leave it stopped
            </Button>
            <Button type="submit" loading={override.isPending}>
              Let it pass in my name
            </Button>
          </Group>
        </Stack>
      </form>
    </Modal>
  );
}
