import {
  Autocomplete,
  Button,
  Checkbox,
  Group,
  Modal,
  NumberInput,
  Stack,
  Text,
  TextInput,
} from '@mantine/core';
import type { SyntheticEvent } from 'react';
import type { Customer } from '../../../shared/contract/counter/index.ts';
import type { CustomerTerms } from '../../../shared/contract/till/index.ts';
import { DateField } from '../../common/date-field.tsx';
import { deskQuery } from '../../common/desk.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useShop } from '../../common/shop.tsx';
import { useBy, useStation } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';

interface EditTermsProps {
  customer: Customer;
  terms: CustomerTerms;
  onClose: () => void;
}

export function EditTerms({ customer, terms, onClose }: EditTermsProps) {
  const by = useBy();
  const { staff } = useStation();
  const { taxes } = useShop();
  const [draft, setDraft, clear] = useDraft(`terms.${customer.id}`, terms);
  const set = (change: Partial<CustomerTerms>) => setDraft((before) => ({ ...before, ...change }));
  const close = () => {
    clear();
    onClose();
  };
  const save = useWrite(deskQuery.till.setCustomerTerms.mutationOptions({ onSuccess: close }));
  const errors = fieldErrors(save.error);
  const owner = staff?.role === 'owner';
  const places = [...new Set(taxes.map(({ place }) => place).filter((place) => place !== ''))];
  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    save.mutate({ by, customerId: customer.id, ...draft });
  };
  return (
    <Modal opened onClose={onClose} title={`Tax and payment, ${customer.name}`} size="34rem">
      <form onSubmit={send}>
        <Stack gap="sm">
          <Autocomplete
            size="md"
            label="Taxed in"
            description="A place that a tax of the shop names; empty for the taxes that hold everywhere"
            data={places}
            maxLength={60}
            value={draft.taxPlace}
            error={errors.taxPlace}
            onChange={(taxPlace) => set({ taxPlace })}
          />
          <TextInput
            label="Exemption certificate, number"
            description="Keep a copy of it: local law says who may be exempt, and what of"
            maxLength={60}
            value={draft.exemptCertificate}
            error={errors.exemptCertificate}
            onChange={(event) => set({ exemptCertificate: event.currentTarget.value })}
          />
          {draft.exemptCertificate.trim() !== '' && (
            <DateField
              label="It holds until"
              value={draft.exemptUntil}
              onChange={(exemptUntil) => set({ exemptUntil })}
            />
          )}
          <Checkbox
            label="Takes the machine and pays later, on account"
            disabled={!owner}
            checked={draft.onAccount}
            onChange={(event) => set({ onAccount: event.currentTarget.checked })}
          />
          {draft.onAccount && (
            <Group grow align="flex-start">
              <NumberInput
                label="Days to pay"
                min={0}
                max={365}
                allowDecimal={false}
                disabled={!owner}
                value={draft.termsDays}
                error={errors.termsDays}
                onChange={(days) => typeof days === 'number' && set({ termsDays: days })}
              />
              <MoneyInput
                label="May owe at most"
                placeholder="No end"
                disabled={!owner}
                value={draft.creditLimit}
                onChange={(creditLimit) => set({ creditLimit })}
              />
            </Group>
          )}
          {!owner && (
            <Text size="sm" c="dimmed">
              Who pays later, an owner decides.
            </Text>
          )}
          <RefusalAlert error={save.error} />
          <Group justify="flex-end" gap="xs">
            <Button variant="default" onClick={close}>
              Cancel
            </Button>
            <Button type="submit" loading={save.isPending}>
              Save
            </Button>
          </Group>
        </Stack>
      </form>
    </Modal>
  );
}
