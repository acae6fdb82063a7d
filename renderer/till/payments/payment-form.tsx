import { Button, Input, SegmentedControl, SimpleGrid, Stack, Text } from '@mantine/core';
import { IconCash, IconCoins } from '@tabler/icons-react';
import { type FormEvent, useId, useState } from 'react';
import type { Account } from '../../../shared/contract/till/index.ts';
import {
  PAYMENT_METHOD_LABELS,
  PAYMENT_METHODS,
  type PaymentKind,
  type PaymentMethod,
} from '../../../shared/work/vocabulary.ts';
import { deskQuery } from '../../common/desk.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { type FarField, useFarField } from '../far-field.ts';
import { countCash } from './cash.ts';
import { likelyAmount, PAYMENT_KIND_LABELS, possibleKinds } from './payment-words.ts';
import classes from './payments.module.css';

interface PaymentFormProps {
  account: Account;
  amountField: FarField;
  /** Told in words what was taken, and the change that was given. */
  onTaken: (words: string) => void;
}

const METHODS = PAYMENT_METHODS.map((value) => ({ value, label: PAYMENT_METHOD_LABELS[value] }));
const VERBS: Record<PaymentKind, string> = {
  deposit: 'Take the deposit',
  payment: 'Take the payment',
  refund: 'Give it back',
};

/**
 * Takes or gives back money. No draft is kept of it: an amount left over from yesterday would be taken for
 * today's.
 */
export function PaymentForm({ account, amountField, onTaken }: PaymentFormProps) {
  const by = useBy();
  const money = useMoney();
  const methodLabel = useId();
  const givenField = useFarField();
  const kinds = possibleKinds(account);
  const [kind, setKind] = useState<PaymentKind>(kinds[0] ?? 'deposit');
  const [method, setMethod] = useState<PaymentMethod>('cash');
  const [amount, setAmount] = useState(() => likelyAmount(kind, account));
  const [given, setGiven] = useState<number | null>(null);
  const [asked, setAsked] = useState(false);
  const inCash = method === 'cash' && kind !== 'refund';
  const cash = inCash && given !== null && amount !== null ? countCash(amount, given) : null;

  const take = useWrite(
    deskQuery.till.takePayment.mutationOptions({
      onSuccess: (_, taken) => {
        const how = PAYMENT_METHOD_LABELS[taken.method].toLowerCase();
        const what = `${PAYMENT_KIND_LABELS[taken.kind]} of ${money(taken.amount)}, ${how}.`;
        const back = cash?.kind === 'change' ? ` Change: ${money(cash.change)}.` : '';
        onTaken(what + back);
      },
    }),
  );

  const send = (event: FormEvent) => {
    event.preventDefault();
    setAsked(true);
    if (amount === null || amount === 0 || cash?.kind === 'short') return;
    take.mutate({ by, jobId: account.jobId, kind, method, amount });
  };

  if (kinds.length === 0) return null;
  return (
    <form onSubmit={send} noValidate aria-label="Take a payment">
      <Stack gap="sm">
        {kinds.length > 1 && (
          <SegmentedControl<PaymentKind>
            fullWidth
            aria-label="What it is"
            data={kinds.map((value) => ({ value, label: PAYMENT_KIND_LABELS[value] }))}
            value={kind}
            onChange={(next) => {
              setKind(next);
              setAmount(likelyAmount(next, account));
              setGiven(null);
            }}
          />
        )}
        <Input.Wrapper label="By" labelElement="div" labelProps={{ id: methodLabel }}>
          <SegmentedControl<PaymentMethod>
            fullWidth
            aria-labelledby={methodLabel}
            data={METHODS}
            value={method}
            onChange={setMethod}
          />
        </Input.Wrapper>
        <SimpleGrid cols={inCash ? 2 : 1} spacing="sm" style={{ alignItems: 'end' }}>
          <MoneyInput
            id={amountField.id}
            label={kinds.length > 1 ? 'Amount' : `${PAYMENT_KIND_LABELS[kind]}, amount`}
            value={amount}
            onChange={setAmount}
            onKeyDown={(event) => {
              // With cash there is one more thing to ask before the money is taken.
              if (event.key !== 'Enter' || !inCash) return;
              event.preventDefault();
              givenField.focus();
            }}
            error={asked && !amount ? 'Say how much, more than zero.' : undefined}
          />
          {inCash && (
            <MoneyInput
              id={givenField.id}
              label="Cash given"
              placeholder="Empty when exact"
              value={given}
              onChange={setGiven}
            />
          )}
        </SimpleGrid>
        <div aria-live="polite">
          {cash?.kind === 'change' && (
            <Text className={classes.change}>
              <IconCoins size={26} aria-hidden /> Change {money(cash.change)}
            </Text>
          )}
          {cash?.kind === 'short' && (
            <>
              <Text fw={600}>{money(cash.short)} is missing.</Text>
              <Button
                variant="default"
                size="sm"
                mt={6}
                onClick={() => {
                  setAmount(given);
                  setGiven(null);
                }}
              >
                Take {money(given ?? 0)} as part of it
              </Button>
            </>
          )}
        </div>
        <RefusalAlert error={take.error} />
        <Button
          type="submit"
          loading={take.isPending}
          leftSection={<IconCash size={18} aria-hidden />}
        >
          {VERBS[kind]}
          {amount !== null && amount > 0 ? `: ${money(amount)}` : ''}
        </Button>
      </Stack>
    </form>
  );
}
