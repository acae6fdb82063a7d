import {
  Button,
  Checkbox,
  Input,
  SegmentedControl,
  SimpleGrid,
  Text,
  TextInput,
} from '@mantine/core';
import { IconCoins } from '@tabler/icons-react';
import { useId } from 'react';
import {
  PAYMENT_METHOD_LABELS,
  PAYMENT_METHODS,
  type PaymentMethod,
} from '../../../shared/work/vocabulary.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { useMoney } from '../../common/shop.tsx';
import { type FarField, useFarField } from '../far-field.ts';
import { countCash } from './cash.ts';
import classes from './payments.module.css';

/** Money while it changes hands. */
export interface MoneyHanded {
  method: PaymentMethod;
  amount: number | null;
  /** Cash on the counter; null when it is exact. */
  given: number | null;
  reference: string;
  keepOver: boolean;
}

export const handed = (amount: number | null): MoneyHanded => ({
  method: 'cash',
  amount,
  given: null,
  reference: '',
  keepOver: false,
});

/** What would be sent; null while something is missing. `due` is null where any sum may be taken. */
export function readHanded(
  { method, amount, given, reference, keepOver }: MoneyHanded,
  due: number | null,
) {
  const counted = method === 'cash' ? given : null;
  if (amount === null || amount === 0) return null;
  if (counted !== null && countCash(amount, counted).kind === 'short') return null;
  return {
    method,
    amount,
    given: counted,
    reference: method === 'cash' ? '' : reference,
    keepOver: keepOver && due !== null && amount > due,
  };
}

const METHODS = PAYMENT_METHODS.map((value) => ({ value, label: PAYMENT_METHOD_LABELS[value] }));

interface MoneyFieldsProps {
  value: MoneyHanded;
  onChange: (value: MoneyHanded) => void;
  label: string;
  /** What can be taken without asking; null for any sum. */
  due: number | null;
  /** It was sent once: what is missing is said. */
  asked: boolean;
  /** The shop gives it to the customer. */
  back?: boolean;
  amountField: FarField;
}

/** By what means, how much, what cash was given, and what becomes of what is over. */
export function MoneyFields(props: MoneyFieldsProps) {
  const { value, onChange, label, due, asked, back = false, amountField } = props;
  const money = useMoney();
  const methodLabel = useId();
  const givenField = useFarField();
  const { method, amount, given } = value;
  const set = (change: Partial<MoneyHanded>) => onChange({ ...value, ...change });
  const inCash = method === 'cash' && !back;
  const cash = inCash && given !== null && amount !== null ? countCash(amount, given) : null;
  const over = due === null || amount === null ? 0 : amount - due;
  return (
    <>
      <Input.Wrapper label="By" labelElement="div" labelProps={{ id: methodLabel }}>
        <SegmentedControl<PaymentMethod>
          fullWidth
          aria-labelledby={methodLabel}
          data={METHODS}
          value={method}
          onChange={(next) => set({ method: next })}
        />
      </Input.Wrapper>
      <SimpleGrid
        cols={method === 'cash' && back ? 1 : 2}
        spacing="sm"
        style={{ alignItems: 'end' }}
      >
        <MoneyInput
          id={amountField.id}
          data-autofocus
          label={label}
          value={amount}
          onChange={(next) => set({ amount: next })}
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
            onChange={(next) => set({ given: next })}
          />
        )}
        {method !== 'cash' && (
          <TextInput
            label="Reference"
            placeholder="Of the slip, transfer or cheque"
            maxLength={80}
            value={value.reference}
            onChange={(event) => set({ reference: event.currentTarget.value })}
          />
        )}
      </SimpleGrid>
      {over > 0 && (
        <Checkbox
          label={`Keep ${money(over)} for the customer: it is more than is due`}
          checked={value.keepOver}
          onChange={(event) => set({ keepOver: event.currentTarget.checked })}
        />
      )}
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
              onClick={() => set({ amount: given, given: null })}
            >
              Take {money(given ?? 0)} as part of it
            </Button>
          </>
        )}
      </div>
    </>
  );
}
