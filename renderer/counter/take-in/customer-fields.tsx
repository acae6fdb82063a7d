import { Button, Group, Stack, Text, TextInput } from '@mantine/core';
import type { Customer } from '../../../shared/contract/counter/index.ts';
import { readContact } from './contact.ts';
import type { DraftPart } from './draft.ts';
import { KnownCustomerHint } from './known-customer-hint.tsx';
import { useCustomersLike, useLikelySame } from './lookups.ts';
import { SuggestingInput } from './suggesting-input.tsx';

interface CustomerFieldsProps extends DraftPart {
  onKnown: (customer: Customer) => void;
  onForget: () => void;
}

const contactOf = ({ phone, email }: { phone: string; email: string }): string =>
  [phone, email].filter(Boolean).join(' · ');

function contactInWords(typed: string): string {
  const { phone, email } = readContact(typed);
  const read = [phone && `Telephone ${phone}`, email && `e-mail ${email}`].filter(Boolean);
  return read.length === 0 ? 'In any order; either may be missing.' : read.join(' · ');
}

/** Who brings the machine: one field finds or begins a customer. */
export function CustomerFields({ draft, change, faults, onKnown, onForget }: CustomerFieldsProps) {
  const found = useCustomersLike(draft.knownCustomer === null ? draft.name : '');
  const same = useLikelySame(draft);
  if (draft.knownCustomer !== null)
    return <KnownCustomer customer={draft.knownCustomer} onForget={onForget} />;
  return (
    <Stack gap="xs">
      <SuggestingInput
        label="Name"
        data-field="name"
        required
        value={draft.name}
        onChange={(name) => change({ name })}
        suggestions={found.map((customer) => ({
          value: customer.id,
          label: customer.name,
          detail: contactOf(customer),
        }))}
        onPick={(id) => {
          const picked = found.find((customer) => customer.id === id);
          if (picked) onKnown(picked);
        }}
        error={faults.name}
        placeholder="Name or telephone number"
        maxLength={120}
      />
      <TextInput
        label="Telephone and e-mail"
        data-field="contact"
        value={draft.contact}
        onChange={(event) => change({ contact: event.currentTarget.value })}
        inputWrapperOrder={['label', 'input', 'description', 'error']}
        description={contactInWords(draft.contact)}
        error={faults.contact}
        maxLength={240}
        autoComplete="off"
      />
      {same && <KnownCustomerHint customer={same} onTake={() => onKnown(same)} />}
    </Stack>
  );
}

function KnownCustomer({ customer, onForget }: { customer: Customer; onForget: () => void }) {
  return (
    <Group justify="space-between" wrap="nowrap" gap="xs" data-field="name">
      <div>
        <Text fw={700}>
          <bdi>{customer.name}</bdi>
        </Text>
        {customer.phone && <Text size="sm">{customer.phone}</Text>}
        {customer.email && (
          <Text size="sm" style={{ overflowWrap: 'anywhere' }}>
            {customer.email}
          </Text>
        )}
        <Text size="xs" c="dimmed">
          Customer {customer.number}
        </Text>
      </div>
      <Button
        variant="default"
        size="compact-sm"
        style={{ flexShrink: 0 }}
        aria-label="Change the customer"
        onClick={onForget}
      >
        Change
      </Button>
    </Group>
  );
}
