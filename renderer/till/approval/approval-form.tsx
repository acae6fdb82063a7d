import {
  Alert,
  Button,
  Input,
  SegmentedControl,
  Stack,
  Text,
  Textarea,
  TextInput,
} from '@mantine/core';
import { IconCalendarOff, IconThumbUp } from '@tabler/icons-react';
import { type FormEvent, useId, useRef, useState } from 'react';
import type { Account, BillTerms, Estimate } from '../../../shared/contract/till/index.ts';
import { withoutPrice } from '../../../shared/work/till/at-least.ts';
import {
  APPROVAL_WAY_LABELS,
  APPROVAL_WAYS,
  type ApprovalWay,
} from '../../../shared/work/vocabulary.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { useJob } from '../../common/job.tsx';
import { MoneyInput } from '../../common/money-input.tsx';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useMoney, useToday } from '../../common/shop.tsx';
import { SignatureField, signatureInput } from '../../common/signature-field.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import type { FarField } from '../far-field.ts';
import { useBillAhead } from '../limit/use-bill-ahead.ts';
import { OptionChoice, TakenLines } from './option-choice.tsx';
import { useApprovalDraft } from './use-approval-draft.ts';

interface ApprovalFormProps {
  account: Account;
  estimate: Estimate;
  terms: BillTerms;
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
  const { account, estimate, terms, unwritten, amountField } = props;
  const by = useBy();
  const job = useJob();
  const money = useMoney();
  const howLabel = useId();
  const format = useFormat();
  const today = useToday();
  const ahead = useBillAhead(account.jobId);
  const draft = useApprovalDraft(job, { account, estimate, ahead }, terms);
  const [asked, setAsked] = useState(false);
  const taken = useRef<HTMLParagraphElement>(null);
  const approved = account.approvals.at(-1);
  const standing = approved?.estimateId === estimate.id && ahead?.stopped !== true;
  const approve = useWrite(
    deskQuery.till.approve.mutationOptions({
      onSuccess: () => {
        draft.clear();
        setAsked(false);
        taken.current?.focus();
      },
    }),
  );
  const errors = fieldErrors(approve.error);
  const inPerson = draft.how === 'in-person';
  const unsigned = inPerson && (draft.signature === null || draft.signature.name.trim() === '');
  const nameless = draft.approvedBy.trim() === '';
  const several = estimate.options.length > 1;
  const { option, declined } = draft;
  const nothingTaken = option !== null && declined.length === option.lines.length;
  const { validUntil } = estimate;
  const past = validUntil !== null && validUntil < today;

  const send = (event: FormEvent) => {
    event.preventDefault();
    setAsked(true);
    if (draft.amount === null || option === null || nothingTaken || unsigned || nameless) return;
    approve.mutate({
      by,
      jobId: account.jobId,
      estimateId: estimate.id,
      how: draft.how,
      approvedBy: draft.approvedBy,
      option: option.key,
      declined,
      amount: draft.amount,
      note: draft.note,
      signature: inPerson && draft.signature ? signatureInput(draft.signature) : null,
    });
  };

  return (
    <form onSubmit={send} noValidate aria-label="Take an approval">
      <Stack gap="sm">
        <Text ref={taken} role="status" tabIndex={-1} fw={600}>
          {standing &&
            `Revision ${estimate.revision} is approved, up to ${money(approved.amount)}. Another approval would take its place.`}
        </Text>
        {unwritten && (
          <Text size="sm">
            Revision {estimate.revision} is what is approved here. Lines typed since then are not in
            it: write them first if the customer hears of them.
          </Text>
        )}
        {ahead !== undefined && ahead.unpriced.length > 0 && (
          <Text size="sm">
            {withoutPrice(ahead.unpriced.length)}, and{' '}
            {ahead.unpriced.length === 1 ? 'comes' : 'come'} to the bill beside what is approved
            here: {ahead.unpriced.join('; ')}.
          </Text>
        )}
        {past && (
          <Alert
            color="yellow"
            icon={<IconCalendarOff aria-hidden />}
            title={`Revision ${estimate.revision} was good until ${format.date(validUntil)}`}
          >
            <Text size="sm">
              It can’t be approved any more. Look its prices over above and write the next revision.
            </Text>
          </Alert>
        )}
        {several && (
          <OptionChoice
            estimate={estimate}
            option={option}
            onChange={draft.setOption}
            error={asked && option === null ? 'Say which option the customer takes.' : undefined}
          />
        )}
        {option !== null && option.lines.length > 1 && (
          <TakenLines
            key={option.key}
            option={option}
            declined={declined}
            onChange={draft.setDeclined}
            error={nothingTaken ? 'Leave at least one line, or take no approval.' : undefined}
          />
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
          description={comesTo()}
          value={draft.amount}
          error={
            errors.amount ?? (asked && draft.amount === null ? 'Say up to what amount.' : undefined)
          }
          onChange={draft.setAmount}
        />
        <Textarea
          label="Note on the approval"
          autosize
          minRows={1}
          maxRows={4}
          maxLength={500}
          value={draft.note}
          onChange={(event) => draft.setNote(event.currentTarget.value)}
        />
        {inPerson && (
          <SignatureField
            label="Signature of who approves"
            value={draft.signature}
            onChange={draft.setSignature}
            suggestedName={draft.approvedBy}
            {...(asked &&
              unsigned && {
                error:
                  'An approval in person is signed. Let the customer sign, or record a typed signature.',
              })}
          />
        )}
        <RefusalAlert error={approve.error} />
        <Button
          type="submit"
          variant={standing ? 'default' : 'filled'}
          loading={approve.isPending}
          leftSection={<IconThumbUp size={18} aria-hidden />}
        >
          {standing ? 'Take another approval' : 'Take the approval'}
        </Button>
      </Stack>
    </form>
  );

  function comesTo(): string {
    if (draft.total === null) return 'Choose the option first.';
    if (draft.ahead !== null)
      return `With what came since the estimate it comes to ${money(draft.ahead)}`;
    const what = several ? option?.label : `Revision ${estimate.revision}`;
    const without = declined.length === 0 ? '' : ' without what is declined';
    return `${what}${without} comes to ${money(draft.total)}`;
  }
}
