import { Button, Group, SegmentedControl, Stack, Textarea, TextInput } from '@mantine/core';
import type { FormEvent } from 'react';
import type { Customer } from '../../../shared/contract/counter/index.ts';
import { REACH_BY, REACH_BY_LABELS } from '../../../shared/work/vocabulary.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';

export type CustomerFields = Pick<
  Customer,
  'name' | 'phone' | 'email' | 'address' | 'reachBy' | 'note'
>;

export const NO_CUSTOMER: CustomerFields = {
  name: '',
  phone: '',
  email: '',
  address: '',
  reachBy: 'telephone',
  note: '',
};

interface CustomerFormProps {
  fields: CustomerFields;
  onChange: (fields: CustomerFields) => void;
  onSubmit: () => void;
  onCancel: () => void;
  error: unknown;
  sending: boolean;
  submitLabel: string;
}

/** The fields of a customer, for adding and for mending. */
export function CustomerForm(props: CustomerFormProps) {
  const { fields, onChange, error } = props;
  const errors = fieldErrors(error);
  const text = (key: Exclude<keyof CustomerFields, 'reachBy'>, label: string) => ({
    label,
    value: fields[key],
    error: errors[key],
    onChange: (event: { currentTarget: { value: string } }) =>
      onChange({ ...fields, [key]: event.currentTarget.value }),
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    props.onSubmit();
  };
  return (
    <form onSubmit={submit}>
      <Stack gap="sm">
        <TextInput {...text('name', 'Name')} required data-autofocus autoComplete="off" />
        <Group grow align="flex-start">
          <TextInput {...text('phone', 'Telephone')} type="tel" autoComplete="off" />
          <TextInput {...text('email', 'E-mail')} inputMode="email" autoComplete="off" />
        </Group>
        <div>
          <div id="reach-by">Reach by</div>
          <SegmentedControl
            aria-labelledby="reach-by"
            value={fields.reachBy}
            onChange={(reachBy) => onChange({ ...fields, reachBy })}
            data={REACH_BY.map((value) => ({ value, label: REACH_BY_LABELS[value] }))}
          />
        </div>
        <Textarea {...text('address', 'Address')} />
        <Textarea {...text('note', 'Note')} description="For the shop; it is not printed." />
        <RefusalAlert error={error} brief />
        <Group justify="flex-end" gap="xs">
          <Button variant="default" onClick={props.onCancel}>
            Cancel
          </Button>
          <Button type="submit" loading={props.sending}>
            {props.submitLabel}
          </Button>
        </Group>
      </Stack>
    </form>
  );
}
