import { Button, SegmentedControl, Stack } from '@mantine/core';
import { IconCash } from '@tabler/icons-react';
import { type FormEvent, useState } from 'react';
import type { Account } from '../../../shared/contract/till/index.ts';
import { PAYMENT_METHOD_LABELS, type PaymentKind } from '../../../shared/work/vocabulary.ts';
import { deskQuery } from '../../common/desk.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import type { FarField } from '../far-field.ts';
import { handed, MoneyFields, type MoneyHanded, readHanded } from './money-fields.tsx';
import { likelyAmount, mostDue, PAYMENT_KIND_LABELS, possibleKinds } from './payment-words.ts';

interface PaymentFormProps {
  account: Account;
  amountField: FarField;
  /** Told in words what was taken, and the change that was given. */
  onTaken: (words: string) => void;
}

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
  const kinds = possibleKinds(account);
  const [kind, setKind] = useState<PaymentKind>(kinds[0] ?? 'deposit');
  const [value, setValue] = useState<MoneyHanded>(() => handed(likelyAmount(kind, account)));
  const [asked, setAsked] = useState(false);
  const due = mostDue(kind, account);
  const back = kind === 'refund';
  const reading = readHanded(back ? { ...value, given: null } : value, due);

  const take = useWrite(
    deskQuery.till.takePayment.mutationOptions({
      onSuccess: (_, taken) => {
        const how = PAYMENT_METHOD_LABELS[taken.method].toLowerCase();
        const what = `${PAYMENT_KIND_LABELS[taken.kind]} of ${money(taken.amount)}, ${how}.`;
        const change = (taken.given ?? taken.amount) - taken.amount;
        onTaken(change > 0 ? `${what} Change: ${money(change)}.` : what);
      },
    }),
  );

  const send = (event: FormEvent) => {
    event.preventDefault();
    setAsked(true);
    if (reading !== null) take.mutate({ by, jobId: account.jobId, kind, ...reading });
  };

  if (kinds.length === 0) return null;
  const { amount } = value;
  return (
    <form onSubmit={send} noValidate aria-label="Take a payment">
      <Stack gap="sm">
        {kinds.length > 1 && (
          <SegmentedControl<PaymentKind>
            fullWidth
            aria-label="What it is"
            data={kinds.map((each) => ({ value: each, label: PAYMENT_KIND_LABELS[each] }))}
            value={kind}
            onChange={(next) => {
              setKind(next);
              setValue({ ...value, amount: likelyAmount(next, account), given: null });
            }}
          />
        )}
        <MoneyFields
          value={value}
          onChange={setValue}
          label={kinds.length > 1 ? 'Amount' : `${PAYMENT_KIND_LABELS[kind]}, amount`}
          due={due}
          asked={asked}
          back={back}
          amountField={amountField}
        />
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
