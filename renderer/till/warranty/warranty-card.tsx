import { Button, Group, Text } from '@mantine/core';
import { IconShieldCheck } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Account, WarrantyWork } from '../../../shared/contract/till/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { useJob } from '../../common/job.tsx';
import { useMoney } from '../../common/shop.tsx';
import type { EstimateDraft } from '../estimate/use-estimate-draft.ts';
import { EventList } from '../event-list.tsx';
import { WarrantyForm } from './warranty-form.tsx';

interface WarrantyCardProps {
  account: Account;
  draft: EstimateDraft;
  closed: boolean;
  onIssued: () => void;
}

/** Work that comes back from an earlier job, or that came back from this one; nothing where there is neither. */
export function WarrantyCard({ account, draft, closed, onIssued }: WarrantyCardProps) {
  const job = useJob();
  const money = useMoney();
  const format = useFormat();
  const { data } = useQuery(deskQuery.till.warranty.queryOptions({ input: { jobId: job.id } }));
  const [opened, setOpened] = useState(false);
  if (data === undefined) return null;
  const { earlier, work } = data;
  const open = !closed && earlier.length > 0;
  if (!open && work.length === 0) return null;

  const cost = ({ cost: known, unknown }: WarrantyWork): string =>
    unknown === 0
      ? `It cost the shop ${money(known)}.`
      : `It cost the shop ${money(known)} and what nobody entered for ${unknown === 1 ? '1 line' : `${unknown} lines`}.`;

  return (
    <Card title="Warranty work" icon={<IconShieldCheck size={22} aria-hidden />}>
      {work.length > 0 && (
        <EventList
          label="Warranty work, oldest first"
          events={work.map((each) => ({
            key: each.invoiceNumber,
            title:
              each.jobId === job.id
                ? `Done at no charge for what was done in ${each.warrantyOf}`
                : `Came back as ${each.jobCode}, done at no charge`,
            detail: `${each.reason}. Invoice ${each.invoiceNumber}, ${format.instant(each.at)}. ${cost(each)}`,
          }))}
          empty=""
        />
      )}
      {open && !opened && (
        <Group justify="space-between" gap="xs">
          <Text size="sm" c="dimmed" flex="1 1 14rem">
            This machine was here before, as {earlier[0]?.code}.
          </Text>
          <Button variant="default" onClick={() => setOpened(true)}>
            It comes back under warranty…
          </Button>
        </Group>
      )}
      {open && opened && (
        <WarrantyForm account={account} draft={draft} earlier={earlier} onIssued={onIssued} />
      )}
    </Card>
  );
}
