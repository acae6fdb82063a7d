import { Button, Group, Text } from '@mantine/core';
import { IconUserQuestion } from '@tabler/icons-react';
import type { Customer } from '../../../shared/contract/counter.ts';

interface KnownCustomerHintProps {
  customer: Customer;
  onTake: () => void;
}

/** Quiet: two people may share a name or a telephone, so it asks and stops nobody. */
export function KnownCustomerHint({ customer, onTake }: KnownCustomerHintProps) {
  return (
    <Group role="status" gap="xs" wrap="nowrap" align="center">
      <IconUserQuestion aria-hidden size={20} style={{ flexShrink: 0 }} />
      <Text size="sm" style={{ flex: 1 }}>
        Known customer? {customer.name}
        {customer.phone && `, ${customer.phone}`}
      </Text>
      <Button variant="light" size="compact-sm" h={32} style={{ flexShrink: 0 }} onClick={onTake}>
        That is who it is
      </Button>
    </Group>
  );
}
