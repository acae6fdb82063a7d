import { Button, Group, Stack, Text, TextInput } from '@mantine/core';
import { IconBarcode } from '@tabler/icons-react';
import { type FormEvent, useRef, useState } from 'react';
import { JobCode } from '../../../shared/contract/ids.ts';
import type { JobParts } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { useShop } from '../../common/shop.tsx';
import { QuantityInput } from '../quantity-input.tsx';
import { RefusedIssue } from './refused-issue.tsx';
import { useIssue, type Wanted } from './use-issue.ts';

const ONE = 1000;

/**
 * Issues a part by its number as it is scanned or typed, one after the other without leaving the field. The
 * field claims what the reader sends: even a job's tag is told here and leads nowhere.
 */
export function IssueForm({ job: { jobId, jobCode } }: { job: JobParts }) {
  const { locale } = useShop();
  const field = useRef<HTMLInputElement>(null);
  const [number, setNumber] = useState('');
  const [quantity, setQuantity] = useState<number | null>(ONE);
  const [tag, setTag] = useState('');
  const [done, setDone] = useState('');
  const { issue, isPending, refused, settle } = useIssue(jobId, (part, sent) => {
    const amount = `${formatQuantity(sent.quantity, locale)} ${part.unit}`;
    setDone(`${amount} ${part.description} (${part.number}) issued to ${jobCode}.`);
  });

  const send = (event: FormEvent) => {
    event.preventDefault();
    const wanted = number.trim();
    if (wanted === '' || quantity === null || quantity === 0) return;
    setDone('');
    // The next scan begins in an empty field, whatever becomes of this one.
    setNumber('');
    const isTag = JobCode.safeParse(wanted.toUpperCase()).success;
    setTag(isTag ? wanted : '');
    if (isTag) return;
    issue({ number: wanted, quantity, reason: '', belowNothing: false });
    setQuantity(ONE);
  };
  const again = (wanted: Wanted) => {
    setDone('');
    issue(wanted);
    field.current?.focus();
  };

  return (
    <Stack gap="sm">
      <form onSubmit={send} noValidate aria-label="Issue to this job" data-claims-code>
        <Group align="flex-start" gap="sm">
          <TextInput
            label="Part number or barcode"
            description="Scan it, or type any of its numbers"
            leftSection={<IconBarcode size={20} aria-hidden />}
            ref={field}
            autoFocus
            autoComplete="off"
            maxLength={120}
            flex="1 1 18rem"
            value={number}
            error={
              tag === '' ? undefined : `${tag} is the tag of a job, not a part. Scan the part.`
            }
            onChange={(event) => {
              setNumber(event.currentTarget.value);
              setTag('');
            }}
          />
          <QuantityInput
            label="Quantity"
            description="As the part is counted"
            w="9.5rem"
            unit=""
            value={quantity}
            error={quantity === null || quantity === 0 ? 'Say how many.' : undefined}
            onChange={setQuantity}
          />
          {/* Never disabled: a reader's Enter would be lost in a form whose button is. */}
          <Button type="submit" size="md" mt="2.95rem" aria-busy={isPending}>
            Issue
          </Button>
        </Group>
      </form>
      {refused !== null && (
        <RefusedIssue
          key={refused.wanted.number}
          {...refused}
          onAgain={again}
          onSettled={() => {
            settle();
            field.current?.focus();
          }}
        />
      )}
      <Text role="status" fw={600}>
        {done}
      </Text>
    </Stack>
  );
}
