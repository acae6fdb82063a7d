import { Anchor, Autocomplete, Button, Text } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import { Link } from 'react-router';
import type { StockCountId } from '../../../shared/contract/ids.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { QuantityInput } from '../quantity-input.tsx';
import type { ClosedLine } from './count-outcome.tsx';
import classes from './counts.module.css';
import { useAmount } from './use-amount.ts';

const USUAL = [
  'Used and not issued',
  'Came in and was not received',
  'Lies in another bin',
  'Broken and thrown away',
  'Counted wrongly before',
];

/** One difference: where it comes from, or what a second look found. */
export function ExplainDifference({ countId, line }: { countId: StockCountId; line: ClosedLine }) {
  const by = useBy();
  const { amount } = useAmount();
  const { partId, number, description, unit, counted, outcome } = line;
  const [explanation, setExplanation] = useState('');
  const [recounted, setRecounted] = useState<number | null>(null);
  const [asked, setAsked] = useState(false);
  const explain = useWrite(deskQuery.parts.explainDifference.mutationOptions());
  const errors = fieldErrors(explain.error);
  const send = (event: FormEvent) => {
    event.preventDefault();
    setAsked(true);
    if (explanation.trim() === '') return;
    explain.mutate({ by, countId, partId, explanation, recounted });
  };
  const off = amount(Math.abs(outcome.difference), unit);
  return (
    <li>
      <Text fw={600} component="h3" fz="md">
        <Anchor inherit component={Link} to={`/part/${partId}`}>
          {number}
        </Anchor>{' '}
        {description}
      </Text>
      <Text>
        {outcome.difference > 0 ? `${off} too many` : `${off} missing`}: counted{' '}
        {amount(counted, unit)}, expected {amount(outcome.expected, unit)}.
      </Text>
      <form onSubmit={send} noValidate aria-label={`Explain ${number}`} className={classes.explain}>
        <Autocomplete
          label="Where it comes from"
          description="It stays with the movement"
          required
          size="md"
          data={USUAL}
          filter={({ options }) => options}
          maxLength={300}
          value={explanation}
          onChange={setExplanation}
          error={
            errors.explanation ??
            (asked && explanation.trim() === '' ? 'Say it in a few words.' : undefined)
          }
        />
        <QuantityInput
          label="Looked again"
          description="Empty if the count holds"
          unit={unit}
          value={recounted}
          onChange={setRecounted}
          error={errors.recounted}
        />
        <Button type="submit" loading={explain.isPending}>
          Put it on the shelf
        </Button>
      </form>
      <RefusalAlert error={explain.error} />
    </li>
  );
}
