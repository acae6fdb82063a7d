import { Alert, Button, Group, Modal, Radio, Stack, Text, Textarea } from '@mantine/core';
import { IconAlertTriangle, IconReceipt } from '@tabler/icons-react';
import { useState } from 'react';
import type { Account } from '../../../shared/contract/till/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { PaperButton } from '../../common/paper-button.tsx';
import { RefusalAlert, refusalOf } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import type { EstimateDraft } from '../estimate/use-estimate-draft.ts';
import { useBillAhead } from '../limit/use-bill-ahead.ts';

interface InvoiceCardProps {
  account: Account;
  draft: EstimateDraft;
  closed: boolean;
  onIssued: () => void;
  onAskAgain: () => void;
}

/** The bill: issued once, never changed. */
export function InvoiceCard(props: InvoiceCardProps) {
  const { account } = props;
  const money = useMoney();
  const format = useFormat();
  const { invoice } = account;
  if (invoice !== null) {
    return (
      <Card title={`Invoice ${invoice.number}`} aside={<PaperButton paper={invoice.paper} />}>
        <Text>
          {money(invoice.totals.total)}, issued {format.instant(invoice.issuedAt)} by{' '}
          {invoice.issuedBy}.
        </Text>
        <Text size="sm" c="dimmed" mt={4}>
          An issued invoice never changes; it is corrected by a credit note.
        </Text>
      </Card>
    );
  }
  return (
    <Card title="Invoice">
      {account.estimates.length === 0 || props.closed ? (
        <Text size="sm" c="dimmed">
          {props.closed
            ? 'The job was handed over without an invoice.'
            : 'There is nothing to bill from yet: write an estimate, and have it approved.'}
        </Text>
      ) : (
        <IssueForm {...props} />
      )}
    </Card>
  );
}

type BilledLines = 'written' | 'typed';

const UNTOUCHED: { billed: BilledLines; note: string } = { billed: 'typed', note: '' };

function IssueForm({ account, draft, onIssued, onAskAgain }: InvoiceCardProps) {
  const by = useBy();
  const money = useMoney();
  const [kept, setKept, clear] = useDraft(`invoice.${account.jobId}`, UNTOUCHED);
  const [confirming, setConfirming] = useState(false);
  const latest = account.estimates.at(-1);
  const ahead = useBillAhead(account.jobId);
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
  if (latest === undefined) return null;
  const typed = draft.changed && draft.ready !== null;
  const billed: BilledLines = typed ? kept.billed : 'written';
  const written = ahead?.estimate?.total ?? latest.totals.total;
  const total = billed === 'typed' ? draft.totals.total : written;
  const over = Math.max(0, total - account.approvedLimit);
  const overRefused = issue.error !== null && refusalOf(issue.error).code === 'OVER_APPROVAL';
  // Once there is another approval, or the bill is less, the refusal of before is no news any more.
  const refused = overRefused && over > 0;

  return (
    <Stack gap="sm">
      {typed && (
        <Radio.Group
          label="What is billed"
          value={billed}
          onChange={(value) =>
            setKept((before) => ({ ...before, billed: value === 'typed' ? 'typed' : 'written' }))
          }
        >
          <Stack gap={6} mt={4}>
            <Radio value="typed" label={`The lines as typed above: ${money(draft.totals.total)}`} />
            <Radio
              value="written"
              label={`Revision ${latest.revision} as written: ${money(written)}`}
            />
          </Stack>
        </Radio.Group>
      )}
      {draft.changed && !typed && (
        <Text size="sm">
          Some line above can’t be read: revision {latest.revision} would be billed as written.
        </Text>
      )}
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
      {over > 0 && !refused && (
        <Text size="sm" fw={500}>
          {money(over)} of this is not approved. Take another approval before issuing it.
        </Text>
      )}
      {(refused || !overRefused) && <RefusalAlert error={issue.error} />}
      {refused && (
        <Alert
          color="yellow"
          icon={<IconAlertTriangle aria-hidden />}
          title={`${money(total)} against the approved ${money(account.approvedLimit)}: ${money(over)} too much`}
        >
          <Text size="sm" mb="xs">
            Ring the customer, read out the estimate, and take down the new amount. Or take lines
            out until the bill fits. Local law decides what may be charged without an approval.
          </Text>
          <Button variant="default" size="sm" onClick={onAskAgain}>
            Take another approval
          </Button>
        </Alert>
      )}
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
          <Button
            data-autofocus
            loading={issue.isPending}
            onClick={() =>
              issue.mutate({
                by,
                jobId: account.jobId,
                lines: billed === 'typed' ? draft.ready : null,
                discount: billed === 'typed' ? draft.discount : null,
                note: kept.note,
              })
            }
          >
            Issue it
          </Button>
        </Group>
      </Modal>
    </Stack>
  );
}
