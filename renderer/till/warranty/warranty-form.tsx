import { Button, Group, Modal, Select, Stack, Text, TextInput } from '@mantine/core';
import { IconShieldCheck } from '@tabler/icons-react';
import { type SyntheticEvent, useEffect, useRef, useState } from 'react';
import type { JobCard } from '../../../shared/contract/counter/index.ts';
import { JobId } from '../../../shared/contract/ids.ts';
import type { Account } from '../../../shared/contract/till/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import type { EstimateDraft } from '../estimate/use-estimate-draft.ts';

interface WarrantyFormProps {
  account: Account;
  draft: EstimateDraft;
  /** Jobs of the same machine that were handed over, newest first. */
  earlier: readonly JobCard[];
  onIssued: () => void;
}

const UNTOUCHED = { warrantyOf: '', reason: '' };

/** Issues the bill at no charge, with the job that it goes back to and why. */
export function WarrantyForm({ account, draft, earlier, onIssued }: WarrantyFormProps) {
  const by = useBy();
  const format = useFormat();
  const [kept, setKept, clear] = useDraft(`warranty.${account.jobId}`, UNTOUCHED);
  const [asked, setAsked] = useState(false);
  const first = useRef<HTMLInputElement>(null);
  useEffect(() => first.current?.focus(), []);
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
  const { reason } = kept;
  const origin = earlier.find(({ id }) => id === kept.warrantyOf);
  const lines = draft.changed ? draft.ready : null;
  const nothing = lines === null && account.estimates.length === 0;

  const ask = (event: SyntheticEvent) => {
    event.preventDefault();
    setAsked(true);
    issue.reset();
    if (origin !== undefined && reason.trim() !== '' && !nothing) setConfirming(true);
  };

  return (
    <form onSubmit={ask} noValidate aria-label="Warranty work">
      <Stack gap="sm">
        <Text size="sm" c="dimmed">
          Where a machine comes back for work that the shop stands by, the bill is issued at no
          charge: the lines keep their cost, and it counts against the earlier job.
        </Text>
        <Select
          ref={first}
          label="Goes back to"
          placeholder="Choose the earlier job"
          data={earlier.map((job) => ({
            value: job.id,
            label: `${job.code}, ${format.date(job.takenInOn)}: ${job.complaint}`,
          }))}
          value={origin?.id ?? null}
          onChange={(id) => setKept((before) => ({ ...before, warrantyOf: id ?? '' }))}
          error={asked && origin === undefined ? 'Say which job it goes back to.' : undefined}
        />
        <TextInput
          label="Why it is at no charge"
          description="It stands on the customer’s paper."
          maxLength={500}
          value={reason}
          onChange={(event) => {
            const typed = event.currentTarget.value;
            setKept((before) => ({ ...before, reason: typed }));
          }}
          error={asked && reason.trim() === '' ? 'Say why in a few words.' : undefined}
        />
        {nothing && asked && (
          <Text size="sm" role="status">
            There is nothing to bill yet: type the lines of what was done above.
          </Text>
        )}
        <RefusalAlert error={issue.error} />
        <Group justify="flex-end">
          <Button
            type="submit"
            variant="default"
            leftSection={<IconShieldCheck size={18} aria-hidden />}
          >
            Issue at no charge
          </Button>
        </Group>
      </Stack>
      <Modal
        opened={confirming}
        onClose={() => setConfirming(false)}
        title="Issue the bill at no charge?"
      >
        <Text mb="md">
          It takes the next invoice number, comes to nothing, and names {origin?.code}. An issued
          invoice never changes.
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
                sort: 'warranty',
                warrantyOf: JobId.parse(kept.warrantyOf),
                reason,
                lines,
              })
            }
          >
            Issue it
          </Button>
        </Group>
      </Modal>
    </form>
  );
}
