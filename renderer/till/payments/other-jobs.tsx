import { Button, Group, Stack, Text } from '@mantine/core';
import { IconArrowsJoin2, IconCoins } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Account } from '../../../shared/contract/till/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { AccountPayment } from './account-payment.tsx';

interface OtherJobsProps {
  account: Account;
  /** Told in words what was done. */
  onDone: (words: string) => void;
}

/** What the customer owes on other jobs, and what is left over there; nothing when there is none of it. */
export function OtherJobs({ account, onDone }: OtherJobsProps) {
  const by = useBy();
  const money = useMoney();
  const { jobId, customerId, due } = account;
  const [paying, setPaying] = useState(false);
  const query = useQuery(deskQuery.till.customerMoney.queryOptions({ input: { customerId } }));
  const spend = useWrite(
    deskQuery.till.spendCredit.mutationOptions({
      onSuccess: (after) => onDone(`${money(due - after.due)} of it is paid from other jobs.`),
    }),
  );
  if (query.data === undefined) return null;
  const others = query.data.open.filter((each) => each.jobId !== jobId && each.open > 0);
  const over = query.data.held.filter(
    (each) => each.jobId !== jobId && each.billed && each.amount > 0,
  );
  const owed = others.reduce((sum, { open }) => sum + open, 0);
  const spare = over.reduce((sum, { amount }) => sum + amount, 0);
  if (others.length === 0 && (over.length === 0 || due <= 0)) return null;
  return (
    <Stack gap="xs">
      {others.length > 0 && (
        <>
          <Text size="sm">
            On other jobs {money(owed)} is open too:{' '}
            {others.map(({ number, jobCode }) => `${number} (${jobCode})`).join(', ')}.
          </Text>
          <Group>
            <Button
              variant="default"
              leftSection={<IconArrowsJoin2 size={18} aria-hidden />}
              onClick={() => setPaying(true)}
            >
              Take one payment for all
            </Button>
          </Group>
        </>
      )}
      {over.length > 0 && due > 0 && (
        <>
          <Text size="sm">
            {money(spare)} is left over on {over.map(({ jobCode }) => jobCode).join(', ')}.
          </Text>
          <RefusalAlert error={spend.error} />
          <Group>
            <Button
              variant="default"
              leftSection={<IconCoins size={18} aria-hidden />}
              loading={spend.isPending}
              onClick={() => spend.mutate({ by, jobId })}
            >
              Use {money(Math.min(spare, due))} of it here
            </Button>
          </Group>
        </>
      )}
      <AccountPayment
        customerId={customerId}
        customerMoney={query.data}
        opened={paying}
        onClose={() => setPaying(false)}
        onTaken={(words) => {
          setPaying(false);
          onDone(words);
        }}
      />
    </Stack>
  );
}
