import { Stack, Text } from '@mantine/core';
import { useRef, useState } from 'react';
import type { Account, Payment } from '../../../shared/contract/till/index.ts';
import { PAYMENT_METHOD_LABELS } from '../../../shared/work/vocabulary.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import { PaperButton } from '../../common/paper-button.tsx';
import { useMoney } from '../../common/shop.tsx';
import { EventList } from '../event-list.tsx';
import type { FarField } from '../far-field.ts';
import { OtherJobs } from './other-jobs.tsx';
import { PaymentForm } from './payment-form.tsx';
import { PAYMENT_KIND_LABELS } from './payment-words.ts';
import classes from './payments.module.css';

interface PaymentsCardProps {
  account: Account;
  amountField: FarField;
}

/** `Card, slip 88`; of cash, what was given and what went back. */
function usePaymentWords() {
  const money = useMoney();
  return ({ method, reference, receipt }: Payment): string =>
    [
      PAYMENT_METHOD_LABELS[method],
      reference,
      receipt === null || receipt.change === 0
        ? ''
        : `${money(receipt.given ?? 0)} given, ${money(receipt.change)} change`,
    ]
      .filter(Boolean)
      .join(', ');
}

/** Deposits, payments and refunds of the job, and where the next is taken. */
export function PaymentsCard({ account, amountField }: PaymentsCardProps) {
  const money = useMoney();
  const format = useFormat();
  const paymentWords = usePaymentWords();
  const taken = useRef<HTMLParagraphElement>(null);
  const [words, setWords] = useState('');
  const { payments, invoice, due, depositAgreed, paid } = account;
  const settled = invoice !== null && due === 0;

  return (
    <Card title="Payments">
      <Text
        ref={taken}
        role="status"
        tabIndex={-1}
        {...(words !== '' && { className: classes.taken })}
      >
        {words}
      </Text>
      <Stack gap="md">
        {settled && <Text fw={600}>Paid in full.</Text>}
        {!settled && (
          // Another payment begins with what is then due.
          <PaymentForm
            key={`${payments.length} ${invoice?.id}`}
            account={account}
            amountField={amountField}
            onTaken={(what) => {
              setWords(what);
              taken.current?.focus();
            }}
          />
        )}
        <OtherJobs
          account={account}
          onDone={(what) => {
            setWords(what);
            taken.current?.focus();
          }}
        />
        {invoice !== null && account.unapplied === 0 && paid > 0 && (
          <Text size="sm" c="dimmed">
            All that was paid is set against the invoice. To give money back, write a credit note
            first.
          </Text>
        )}
        <EventList
          label="Payments, newest first"
          events={payments.toReversed().map((payment) => ({
            key: payment.id,
            title: `${PAYMENT_KIND_LABELS[payment.kind]}: ${money(payment.amount)}`,
            detail: `${paymentWords(payment)}, taken by ${payment.by}, ${format.instant(payment.at)}.`,
            ...(payment.receipt && { paper: <PaperButton paper={payment.receipt.paper} /> }),
          }))}
          empty={
            depositAgreed === null
              ? 'Nothing is paid yet.'
              : `Nothing is paid yet. A deposit of ${money(depositAgreed)} was agreed at intake.`
          }
        />
        {invoice === null && paid > 0 && (
          <Text size="xs" c="dimmed">
            A deposit belongs to the customer until the invoice is issued; then it is applied.
          </Text>
        )}
      </Stack>
    </Card>
  );
}
