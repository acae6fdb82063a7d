import { Button, Stack, Text } from '@mantine/core';
import { IconArrowBackUp } from '@tabler/icons-react';
import { useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import type { Account } from '../../../shared/contract/till/index.ts';
import { PAYMENT_METHOD_LABELS } from '../../../shared/work/vocabulary.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import { useMoney } from '../../common/shop.tsx';
import { EventList } from '../event-list.tsx';
import type { FarField } from '../far-field.ts';
import { PaymentForm } from './payment-form.tsx';
import { PAYMENT_KIND_LABELS } from './payment-words.ts';
import classes from './payments.module.css';

interface PaymentsCardProps {
  account: Account;
  amountField: FarField;
}

/** Deposits, payments and refunds of the job, and where the next is taken. */
export function PaymentsCard({ account, amountField }: PaymentsCardProps) {
  const money = useMoney();
  const format = useFormat();
  const taken = useRef<HTMLParagraphElement>(null);
  const [words, setWords] = useState('');
  const [refunding, setRefunding] = useState(false);
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
        {settled && !refunding ? (
          account.unapplied > 0 && (
            <div>
              <Button
                variant="default"
                leftSection={<IconArrowBackUp size={18} aria-hidden />}
                onClick={() => {
                  flushSync(() => setRefunding(true));
                  amountField.focus();
                }}
              >
                Give money back
              </Button>
            </div>
          )
        ) : (
          // Another payment begins with what is then due.
          <PaymentForm
            key={`${payments.length} ${invoice?.id}`}
            account={account}
            amountField={amountField}
            onTaken={(what) => {
              setWords(what);
              setRefunding(false);
              taken.current?.focus();
            }}
          />
        )}
        <EventList
          label="Payments, newest first"
          events={payments.toReversed().map((payment) => ({
            key: payment.id,
            title: `${PAYMENT_KIND_LABELS[payment.kind]}: ${money(payment.amount)}`,
            detail: `${PAYMENT_METHOD_LABELS[payment.method]}, taken by ${payment.by}, ${format.instant(payment.at)}.`,
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
