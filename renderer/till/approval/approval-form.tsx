import { Button, Input, SegmentedControl, Stack, Text, TextInput } from '@mantine/core';
import { IconThumbUp } from '@tabler/icons-react';
import { type FormEvent, useId, useState } from 'react';
import type { Account, Estimate } from '../../../shared/contract/till/index.ts';
import {
  APPROVAL_WAY_LABELS,
  APPROVAL_WAYS,
  type ApprovalWay,
} from '../../../shared/work/vocabulary.ts';
import { deskQuery } from '../../common/desk.ts';
import { useJob } from '../../common/job.tsx';
import { MoneyInput } from '../../common/money-input.tsx';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';
import { SignatureField } from '../../common/signature-field.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import type { FarField } from '../far-field.ts';
import { useApprovalDraft } from './use-approval-draft.ts';

interface ApprovalFormProps {
  account: Account;
  estimate: Estimate;
  /** Lines are typed that the customer would not hear of: the estimate is read out as it is written. */
  unwritten: boolean;
  amountField: FarField;
}

/** Without the 'by' that the heading says already; capital first. */
const short = (words: string): string =>
  words.replace(/^By (.)/, (_, first: string) => first.toUpperCase());
const WAYS = APPROVAL_WAYS.map((value) => ({ value, label: short(APPROVAL_WAY_LABELS[value]) }));

/** Takes down what the customer agreed to: who, how, and up to what amount. */
export function ApprovalForm(props: ApprovalFormProps) {
  const { account, estimate, unwritten, amountField } = props;
  const by = useBy();
  const job = useJob();
  const money = useMoney();
  const howLabel = useId();
  const draft = useApprovalDraft(job, estimate);
  const [asked, setAsked] = useState(false);
  const approve = useWrite(
    deskQuery.till.approve.mutationOptions({
      onSuccess: () => {
        draft.clear();
        setAsked(false);
      },
    }),
  );
  const errors = fieldErrors(approve.error);
  const inPerson = draft.how === 'in-person';
  const unsigned = inPerson && (draft.signature === null || draft.signature.name.trim() === '');
  const nameless = draft.approvedBy.trim() === '';

  const send = (event: FormEvent) => {
    event.preventDefault();
    setAsked(true);
    if (draft.amount === null || unsigned || nameless) return;
    approve.mutate({
      by,
      jobId: account.jobId,
      estimateId: estimate.id,
      how: draft.how,
      approvedBy: draft.approvedBy,
      amount: draft.amount,
      signature: inPerson ? draft.signature : null,
    });
  };

  return (
    <form onSubmit={send} noValidate aria-label="Take an approval">
      <Stack gap="sm">
        {unwritten && (
          <Text size="sm">
            Revision {estimate.revision} is what is approved here. Lines typed since then are not in
            it: write them first if the customer hears of them.
          </Text>
        )}
        <TextInput
          label="Approved by"
          value={draft.approvedBy}
          maxLength={120}
          error={errors.approvedBy ?? (asked && nameless ? 'Say who approved it.' : undefined)}
          onChange={(event) => draft.setApprovedBy(event.currentTarget.value)}
          onKeyDown={(event) => {
            // A name alone is no approval: how much comes next.
            if (event.key !== 'Enter') return;
            event.preventDefault();
            amountField.focus();
          }}
        />
        <Input.Wrapper label="How" labelElement="div" labelProps={{ id: howLabel }}>
          <SegmentedControl<ApprovalWay>
            fullWidth
            aria-labelledby={howLabel}
            data={WAYS}
            value={draft.how}
            onChange={draft.setHow}
          />
        </Input.Wrapper>
        <MoneyInput
          id={amountField.id}
          label="Up to"
          description={`Revision ${estimate.revision} comes to ${money(estimate.totals.total)}`}
          value={draft.amount}
          error={
            errors.amount ?? (asked && draft.amount === null ? 'Say up to what amount.' : undefined)
          }
          onChange={draft.setAmount}
        />
        {inPerson && (
          <SignatureField
            label="Signature of who approves"
            value={draft.signature}
            onChange={draft.setSignature}
            suggestedName={draft.approvedBy}
            {...(asked && unsigned && { error: 'An approval in person is signed.' })}
          />
        )}
        <RefusalAlert error={approve.error} />
        <Button
          type="submit"
          loading={approve.isPending}
          leftSection={<IconThumbUp size={18} aria-hidden />}
        >
          Take the approval
        </Button>
      </Stack>
    </form>
  );
}
