import { Button, Group, Modal, Text } from '@mantine/core';
import { IconCalendarDollar } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { LineInput, Storage } from '../../../shared/contract/till/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { useJob } from '../../common/job.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { LAW_ON_STORAGE, waitedWords } from './storage-words.ts';

interface StorageCardProps {
  /** Puts it on the bill that is typed; null once the bill is issued. */
  onTake: ((lines: readonly LineInput[]) => void) | null;
}

/** Storage of a machine that nobody collected; nothing while it costs nothing. */
export function StorageCard({ onTake }: StorageCardProps) {
  const job = useJob();
  const { data } = useQuery(deskQuery.till.storage.queryOptions({ input: { jobId: job.id } }));
  if (data === null || data === undefined || data.charged === 0) return null;
  return (
    <Card title="Storage" icon={<IconCalendarDollar size={22} aria-hidden />}>
      <Due storage={data} onTake={onTake} />
    </Card>
  );
}

function Due({ storage, onTake }: StorageCardProps & { storage: Storage }) {
  const job = useJob();
  const by = useBy();
  const money = useMoney();
  const format = useFormat();
  const [confirming, setConfirming] = useState(false);
  const [taken, setTaken] = useState(false);
  const issue = useWrite(
    deskQuery.till.issueInvoice.mutationOptions({ onSettled: () => setConfirming(false) }),
  );
  const { since, amount, toBill, charged, line } = storage;
  return (
    <>
      <Text>
        {waitedWords(job.state, storage)}, since {format.date(since)}. {charged}{' '}
        {charged === 1 ? 'day is' : 'days are'} charged: {money(amount)}
        {toBill === amount ? '' : `, of which ${money(amount - toBill)} is billed`}.
      </Text>
      <Text size="sm" c="dimmed" mt={4}>
        {LAW_ON_STORAGE}
      </Text>
      <RefusalAlert error={issue.error} />
      {line === null ? (
        <Text size="sm" mt="xs">
          All of it is billed.
        </Text>
      ) : (
        <Group gap="xs" mt="sm">
          {onTake !== null && (
            <Button
              variant="default"
              onClick={() => {
                onTake([line]);
                setTaken(true);
              }}
            >
              Put it on the bill: {money(toBill)}
            </Button>
          )}
          <Button variant="default" onClick={() => setConfirming(true)}>
            Issue a storage invoice
          </Button>
          <Text size="sm" role="status">
            {taken ? 'It stands in the lines above.' : ''}
          </Text>
        </Group>
      )}
      <Modal
        opened={confirming}
        onClose={() => setConfirming(false)}
        title={`Bill ${money(toBill)} for storage?`}
      >
        <Text mb="md">
          It takes the next invoice number and stands beside the bill of the work; tax comes on top
          where the shop’s tax rules charge it on fees. {LAW_ON_STORAGE}
        </Text>
        <Group gap="xs" justify="flex-end">
          <Button variant="default" onClick={() => setConfirming(false)}>
            Not yet
          </Button>
          <Button
            data-autofocus
            loading={issue.isPending}
            onClick={() => issue.mutate({ by, jobId: job.id, sort: 'storage' })}
          >
            Issue it
          </Button>
        </Group>
      </Modal>
    </>
  );
}
