import { Button, Textarea } from '@mantine/core';
import { notifications } from '@mantine/notifications';
import type { SyntheticEvent } from 'react';
import type { DrawerDay } from '../../../shared/contract/till/index.ts';
import { drawerDifference } from '../../../shared/money/books/index.ts';
import {
  PAYMENT_METHOD_LABELS,
  PAYMENT_METHODS,
  type PaymentMethod,
} from '../../../shared/work/vocabulary.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useMoney, useToday } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import classes from './books.module.css';
import { differenceWords } from './difference-words.ts';

interface CountDraft {
  opening: number | null;
  counted: Record<PaymentMethod, number | null>;
  note: string;
}

/** Counts the drawer of a day, each method beside what is expected of it. */
export function CountForm({ drawer }: { drawer: DrawerDay }) {
  const by = useBy();
  const money = useMoney();
  const today = useToday();
  const { day, taken, left, cashUps } = drawer;
  const nothing = (method: PaymentMethod) => (taken[method] === 0 ? 0 : null);
  const [draft, setDraft, clear] = useDraft<CountDraft>(`cash-up.${day}`, {
    opening: cashUps.at(-1)?.opening ?? left,
    counted: {
      cash: null,
      card: nothing('card'),
      transfer: nothing('transfer'),
      cheque: nothing('cheque'),
    },
    note: '',
  });
  const count = useWrite(
    deskQuery.till.cashUp.mutationOptions({
      onSuccess: () => {
        clear();
        notifications.show({ color: 'green', message: 'The count is kept.' });
      },
    }),
  );
  const opening = draft.opening ?? 0;
  const expected = { ...taken, cash: taken.cash + opening };
  const { cash, card, transfer, cheque } = draft.counted;
  const counted =
    cash === null || card === null || transfer === null || cheque === null
      ? null
      : { cash, card, transfer, cheque };
  const difference = counted === null ? null : drawerDifference(expected, counted);
  const differs =
    difference !== null && Object.values(difference.byMethod).some((each) => each !== 0);
  const submit = (event: SyntheticEvent) => {
    event.preventDefault();
    if (counted !== null) count.mutate({ by, day, opening, counted, note: draft.note });
  };
  if (day > today)
    return (
      <Card title="Count">
        <p className={classes.note}>That day is still to come.</p>
      </Card>
    );
  return (
    <Card title={cashUps.length === 0 ? 'Count' : 'Count again'}>
      <form onSubmit={submit} className={classes.countForm}>
        <MoneyInput
          label="Cash when the day began"
          description={
            left === null
              ? 'Never counted before this day.'
              : `Last counted ${money(left)}; less what went to the bank`
          }
          value={draft.opening}
          required
          onChange={(minor) => setDraft((before) => ({ ...before, opening: minor }))}
        />
        {PAYMENT_METHODS.map((method) => (
          <CountedField
            key={method}
            method={method}
            expected={expected[method]}
            counted={draft.counted[method]}
            onChange={(minor) =>
              setDraft((before) => ({ ...before, counted: { ...before.counted, [method]: minor } }))
            }
          />
        ))}
        <Textarea
          label="Note"
          description={differs ? 'What is known of the difference' : undefined}
          required={differs}
          autosize
          minRows={2}
          maxLength={500}
          value={draft.note}
          onChange={(event) => {
            const note = event.currentTarget.value;
            setDraft((before) => ({ ...before, note }));
          }}
        />
        <p className={classes.difference} role="status" data-differs={differs}>
          {difference === null
            ? 'Count every method to see the difference.'
            : differs && difference.total === 0
              ? 'In all as expected, but not by method'
              : differenceWords(difference.total, money)}
        </p>
        <RefusalAlert error={count.error} />
        <Button type="submit" size="md" loading={count.isPending}>
          Keep this count
        </Button>
      </form>
    </Card>
  );
}

interface CountedFieldProps {
  method: PaymentMethod;
  /** Below zero when more was given back than taken. */
  expected: number;
  counted: number | null;
  onChange: (minor: number | null) => void;
}

/** What was counted of one method. Nobody types below zero: what was given back is asked for as such. */
function CountedField({ method, expected, counted, onChange }: CountedFieldProps) {
  const money = useMoney();
  const sign = expected < 0 ? -1 : 1;
  const off = counted === null ? 0 : counted - expected;
  return (
    <MoneyInput
      label={`${PAYMENT_METHOD_LABELS[method]}, ${sign < 0 ? 'given back' : 'counted'}`}
      description={`Expected ${money(sign * expected)}${off === 0 ? '' : `: ${differenceWords(off, money)}`}`}
      value={counted === null ? null : sign * counted}
      required
      onChange={(minor) => onChange(minor === null ? null : sign * minor)}
    />
  );
}
