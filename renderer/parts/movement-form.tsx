import { Button, SegmentedControl, Stack, Text, TextInput } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import type { JobId } from '../../shared/contract/ids.ts';
import { HAND_MOVEMENTS, type Part } from '../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../shared/money/index.ts';
import { MOVEMENT_KIND_LABELS } from '../../shared/work/parts/stock-words.ts';
import { deskQuery } from '../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { useShop } from '../common/shop.tsx';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';
import { LimitBanner } from '../till/limit/limit-banner.tsx';
import { JobField } from './job-field.tsx';
import { QuantityInput } from './quantity-input.tsx';
import { afterMovement, type MovementKind, NEEDS_JOB, NEEDS_REASON } from './stock.ts';

const SHORT: Record<MovementKind, string> = {
  received: 'Received',
  issued: 'Issued',
  returned: 'Returned',
  scrapped: 'Scrapped',
  counted: 'Counted',
};
const KINDS = HAND_MOVEMENTS.map((value) => ({ value, label: SHORT[value] }));

/** Writes one movement of a part; what is on the shelf is the sum of them. */
export function MovementForm({ part }: { part: Part }) {
  const by = useBy();
  const { locale } = useShop();
  const [kind, setKind] = useState<MovementKind>('received');
  const [quantity, setQuantity] = useState<number | null>(null);
  const [jobId, setJobId] = useState<JobId | null>(null);
  const [reason, setReason] = useState('');
  const [asked, setAsked] = useState(false);
  const [done, setDone] = useState('');
  const amount = (thousandths: number) => `${formatQuantity(thousandths, locale)} ${part.unit}`;
  const move = useWrite(
    deskQuery.parts.move.mutationOptions({
      onSuccess: (after, sent) => {
        setDone(
          `${MOVEMENT_KIND_LABELS[sent.kind]}: ${amount(sent.quantity)}. On hand: ${amount(after.onHand)}.`,
        );
        setQuantity(null);
        setReason('');
        setAsked(false);
      },
    }),
  );
  const errors = fieldErrors(move.error);
  const needsJob = NEEDS_JOB.includes(kind);
  const needsReason = NEEDS_REASON.includes(kind);
  const noQuantity = quantity === null || (quantity === 0 && kind !== 'counted');
  const after = quantity === null ? null : afterMovement(kind, part.onHand, quantity);

  const send = (event: FormEvent) => {
    event.preventDefault();
    setAsked(true);
    setDone('');
    if (noQuantity || (needsJob && jobId === null) || (needsReason && reason.trim() === '')) return;
    move.mutate({
      by,
      partId: part.id,
      kind,
      quantity,
      jobId: needsJob ? jobId : null,
      reason,
    });
  };

  return (
    <form onSubmit={send} noValidate aria-label="Write a movement">
      <Stack gap="sm">
        <SegmentedControl<MovementKind>
          fullWidth
          aria-label="What happened"
          data={KINDS}
          value={kind}
          onChange={(next) => {
            setKind(next);
            move.reset();
          }}
        />
        <QuantityInput
          label={kind === 'counted' ? 'In the bin' : 'Quantity'}
          unit={part.unit}
          value={quantity}
          onChange={setQuantity}
          error={errors.quantity ?? (asked && noQuantity ? 'Say how many.' : undefined)}
        />
        {needsJob && (
          <JobField
            label={kind === 'issued' ? 'To the job' : 'From the job'}
            value={jobId}
            onChange={setJobId}
            error={errors.jobId ?? (asked && jobId === null ? 'Say which job.' : undefined)}
          />
        )}
        {kind === 'issued' && jobId !== null && <LimitBanner jobId={jobId} />}
        <TextInput
          label={needsReason ? 'Reason' : 'Reason or note'}
          required={needsReason}
          maxLength={300}
          value={reason}
          error={
            errors.reason ??
            (asked && needsReason && reason.trim() === '' ? 'Say why in a few words.' : undefined)
          }
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        {after !== null && (
          <Text size="sm" fw={500}>
            {shelfWords(part.onHand, after, kind, amount)}
          </Text>
        )}
        <RefusalAlert error={move.error} />
        <Button type="submit" loading={move.isPending}>
          Write the movement
        </Button>
        <Text size="sm" role="status">
          {done}
        </Text>
      </Stack>
    </form>
  );
}

function shelfWords(
  before: number,
  after: number,
  kind: MovementKind,
  amount: (thousandths: number) => string,
): string {
  if (after < 0) return `The shelf holds ${amount(before)}: that is ${amount(-after)} too few.`;
  if (kind !== 'counted') return `On hand ${amount(before)}, then ${amount(after)}.`;
  if (after === before) return `As it should be: ${amount(before)}.`;
  const off = amount(Math.abs(after - before));
  return `${off} ${after > before ? 'more' : 'fewer'} than the movements say (${amount(before)}).`;
}
