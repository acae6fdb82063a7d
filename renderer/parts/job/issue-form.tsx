import { Button, Checkbox, Group, Stack, Text, TextInput } from '@mantine/core';
import { IconBarcode } from '@tabler/icons-react';
import { type FormEvent, useRef, useState } from 'react';
import { z } from 'zod';
import { JobCode } from '../../../shared/contract/ids.ts';
import { type JobParts, PartName } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert, refusalOf } from '../../common/refusal.tsx';
import { useShop } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { QuantityInput } from '../quantity-input.tsx';

/** Refusals that a reason gets past, and what the reason then stands for. */
const PASSABLE = ['PROMISED_ELSEWHERE', 'NOT_ON_THE_SHELF'];

const Several = z.object({ parts: z.array(PartName) });
const Elsewhere = z.object({ available: z.int(), jobs: z.array(z.string()) });

/**
 * Issues a part by its number as it is scanned or typed, one after the other without leaving the field. The
 * field claims what the reader sends: even a job's tag is told here and leads nowhere.
 */
export function IssueForm({ job }: { job: JobParts }) {
  const by = useBy();
  const { locale } = useShop();
  const field = useRef<HTMLInputElement>(null);
  const [number, setNumber] = useState('');
  const [quantity, setQuantity] = useState<number | null>(1000);
  const [reason, setReason] = useState('');
  const [inHand, setInHand] = useState(false);
  const [done, setDone] = useState('');
  const issue = useWrite(
    deskQuery.parts.issue.mutationOptions({
      onSuccess: ({ issued }, sent) => {
        const amount = `${formatQuantity(sent.quantity ?? 1000, locale)} ${issued.unit}`;
        setDone(`${amount} ${issued.description} (${issued.number}) issued to ${job.jobCode}.`);
        setNumber('');
        setQuantity(1000);
        setReason('');
        setInHand(false);
        field.current?.focus();
      },
    }),
  );
  const errors = fieldErrors(issue.error);
  const code = issue.error === null ? '' : refusalOf(issue.error).code;
  const passable = PASSABLE.includes(code);
  const isTag = JobCode.safeParse(number.trim().toUpperCase()).success;

  const send = (wanted: string) => {
    setDone('');
    if (wanted.trim() === '' || quantity === null || quantity === 0 || isTag) return;
    issue.mutate({
      by,
      jobId: job.jobId,
      number: wanted,
      quantity,
      reason,
      belowNothing: inHand,
    });
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    send(number);
  };

  return (
    <form onSubmit={submit} noValidate aria-label="Issue to this job" data-claims-code>
      <Stack gap="sm">
        <Group align="flex-start" gap="sm">
          <TextInput
            label="Part number or barcode"
            description="Scan it, or type any of its numbers"
            leftSection={<IconBarcode size={20} aria-hidden />}
            ref={field}
            autoFocus
            autoComplete="off"
            size="md"
            maxLength={120}
            flex="1 1 18rem"
            value={number}
            error={
              errors.number ??
              (isTag ? 'That is the tag of a job, not a part. Scan the part.' : undefined)
            }
            onChange={(event) => {
              setNumber(event.currentTarget.value);
              setDone('');
              if (issue.error !== null) issue.reset();
            }}
          />
          <QuantityInput
            label="Quantity"
            description="As the part is counted"
            size="md"
            w="9.5rem"
            unit=""
            value={quantity}
            error={errors.quantity ?? (quantity === null ? 'Say how many.' : undefined)}
            onChange={setQuantity}
          />
          <Button type="submit" size="md" mt="2.95rem" loading={issue.isPending}>
            Issue
          </Button>
        </Group>
        <RefusalAlert error={issue.error} />
        {code === 'NUMBER_OF_SEVERAL' && (
          <ChooseOne error={issue.error} onChoose={(chosen) => send(chosen)} />
        )}
        {code === 'PROMISED_ELSEWHERE' && <PromisedTo error={issue.error} />}
        {passable && (
          <Group align="flex-end" gap="sm">
            <TextInput
              label="Why it goes to this job all the same"
              required
              flex="1 1 18rem"
              maxLength={300}
              value={reason}
              onChange={(event) => setReason(event.currentTarget.value)}
            />
            {code === 'NOT_ON_THE_SHELF' && (
              <Checkbox
                mb="0.6rem"
                label="I have it in my hand: the count is wrong"
                checked={inHand}
                onChange={(event) => setInHand(event.currentTarget.checked)}
              />
            )}
            <Button
              type="submit"
              variant="light"
              disabled={reason.trim() === '' || (code === 'NOT_ON_THE_SHELF' && !inHand)}
            >
              Issue it with this reason
            </Button>
          </Group>
        )}
        <Text role="status" fw={600}>
          {done}
        </Text>
      </Stack>
    </form>
  );
}

function PromisedTo({ error }: { error: unknown }) {
  const elsewhere = Elsewhere.safeParse(refusalOf(error).data);
  if (!elsewhere.success) return null;
  return <Text size="sm">Promised to {elsewhere.data.jobs.join(', ')}.</Text>;
}

function ChooseOne({ error, onChoose }: { error: unknown; onChoose: (number: string) => void }) {
  const several = Several.safeParse(refusalOf(error).data);
  if (!several.success) return null;
  return (
    <Group gap="xs">
      {several.data.parts.map((part) => (
        <Button key={part.id} variant="default" onClick={() => onChoose(part.number)}>
          {part.number} · {part.description}
        </Button>
      ))}
    </Group>
  );
}
