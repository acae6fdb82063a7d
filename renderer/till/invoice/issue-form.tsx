import { Button, Group, Modal, Radio, Stack, Text, Textarea } from '@mantine/core';
import { IconReceipt } from '@tabler/icons-react';
import { useState } from 'react';
import { deskQuery } from '../../common/desk.ts';
import { refusalOf } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import { billAsEstimated, billAsTyped } from './bill-to-issue.ts';
import { Differences } from './differences.tsx';
import type { InvoiceCardProps } from './invoice-card.tsx';
import { IssueParts } from './issue-parts.tsx';
import { IssueRefusal } from './issue-refusal.tsx';
import { useBilledOnShelf } from './use-billed-on-shelf.ts';

type BilledLines = 'written' | 'typed';

interface Kept {
  billed: BilledLines;
  note: string;
  issueParts: boolean;
}

const UNTOUCHED: Kept = { billed: 'typed', note: '', issueParts: true };

/** The bill before it is issued: what is billed, how that differs from what was approved, and a note. */
export function IssueForm({ account, draft, terms, onIssued, onAskAgain }: InvoiceCardProps) {
  const by = useBy();
  const money = useMoney();
  const [kept, setKept, clear] = useDraft(`invoice.${account.jobId}`, UNTOUCHED);
  const [confirming, setConfirming] = useState(false);
  const issue = useWrite(
    deskQuery.till.issueInvoice.mutationOptions({
      onSuccess: () => {
        draft.startOver();
        clear();
        onIssued();
      },
      onSettled: () => setConfirming(false),
    }),
  );
  const estimated = billAsEstimated(account, terms);
  const { ready, discount } = draft;
  const typed =
    estimated !== null && draft.changed && ready !== null
      ? billAsTyped(account, { lines: ready, discount }, terms)
      : null;
  const onShelf = useBilledOnShelf(
    account.jobId,
    (typed !== null && kept.billed === 'typed' ? typed : estimated)?.lines ?? [],
  );
  if (estimated === null) return null;
  const billed: BilledLines = typed === null ? 'written' : kept.billed;
  const bill = billed === 'typed' && typed !== null ? typed : estimated;
  const { total } = bill.totals;
  const over = Math.max(0, total - account.approvedLimit);
  const overRefused = issue.error !== null && refusalOf(issue.error).code === 'OVER_APPROVAL';
  const written = `Revision ${estimated.revision}${estimated.option === '' ? '' : `, ${estimated.option},`} as ${estimated.declined.length === 0 ? 'written' : 'it was taken'}`;

  const send = (beyondCredit: boolean) =>
    issue.mutate({
      by,
      jobId: account.jobId,
      lines: billed === 'typed' ? ready : null,
      discount: billed === 'typed' ? discount : null,
      note: kept.note,
      beyondCredit,
      issueParts: kept.issueParts && onShelf.length > 0,
    });

  return (
    <Stack gap="sm">
      {typed !== null && (
        <Radio.Group
          label="What is billed"
          value={billed}
          onChange={(value) =>
            setKept((before) => ({ ...before, billed: value === 'typed' ? 'typed' : 'written' }))
          }
        >
          <Stack gap={6} mt={4}>
            <Radio value="typed" label={`The lines as typed above: ${money(typed.totals.total)}`} />
            <Radio value="written" label={`${written}: ${money(estimated.totals.total)}`} />
          </Stack>
        </Radio.Group>
      )}
      {draft.changed && typed === null && (
        <Text size="sm">
          Some line above can’t be read: revision {estimated.revision} would be billed as written.
        </Text>
      )}
      {estimated.declined.length > 0 && (
        <Text size="sm">
          Declined, and not billed unless you type it:{' '}
          {estimated.declined.map(({ description }) => description).join('; ')}. The invoice says
          so.
        </Text>
      )}
      <Differences differences={bill.differences} />
      <Textarea
        label="Note on the invoice"
        autosize
        minRows={1}
        maxRows={5}
        maxLength={2000}
        value={kept.note}
        onChange={(event) => {
          const note = event.currentTarget.value;
          setKept((before) => ({ ...before, note }));
        }}
      />
      <IssueParts
        parts={onShelf}
        checked={kept.issueParts}
        onChange={(issueParts) => setKept((before) => ({ ...before, issueParts }))}
      />
      {over > 0 && !overRefused && (
        <Text size="sm" fw={500}>
          {money(over)} of this is not approved. Take another approval before issuing it.
        </Text>
      )}
      <IssueRefusal
        error={issue.error}
        total={total}
        limit={account.approvedLimit}
        sending={issue.isPending}
        onAskAgain={onAskAgain}
        onLetPass={() => send(true)}
      />
      <Button
        variant={over > 0 ? 'default' : 'filled'}
        leftSection={<IconReceipt size={18} aria-hidden />}
        onClick={() => {
          issue.reset();
          setConfirming(true);
        }}
      >
        Issue the invoice: {money(total)}
      </Button>
      <Modal
        opened={confirming}
        onClose={() => setConfirming(false)}
        title={`Issue an invoice of ${money(total)}?`}
      >
        <Text mb="md">
          It takes the next invoice number, and can’t be changed afterwards: only a credit note
          corrects it.
        </Text>
        <Group gap="xs" justify="flex-end">
          <Button variant="default" onClick={() => setConfirming(false)}>
            Not yet
          </Button>
          <Button data-autofocus loading={issue.isPending} onClick={() => send(false)}>
            Issue it
          </Button>
        </Group>
      </Modal>
    </Stack>
  );
}
