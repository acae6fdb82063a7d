import { Button, Group, Kbd, Text } from '@mantine/core';
import { useHotkeys } from '@mantine/hooks';
import { IconUserQuestion } from '@tabler/icons-react';
import type { Customer } from '../../../shared/contract/counter/index.ts';

interface KnownCustomerHintProps {
  customer: Customer;
  onTake: () => void;
}

/**
 * Quiet: two people may share a name or a telephone, so it asks and stops nobody. It comes up while somebody
 * types, so its button is no stop for Tab: a key meant for the next field would press it. Alt+K does.
 */
export function KnownCustomerHint({ customer, onTake }: KnownCustomerHintProps) {
  useHotkeys([['alt+K', onTake]], []);
  return (
    <Group role="status" gap="xs">
      <IconUserQuestion aria-hidden size={20} style={{ flexShrink: 0 }} />
      <Text size="sm" style={{ flex: '1 1 12rem' }}>
        Known customer? <bdi>{customer.name}</bdi>
        {customer.phone && `, ${customer.phone}`}
      </Text>
      <Button
        variant="light"
        size="compact-sm"
        style={{ flexShrink: 0 }}
        tabIndex={-1}
        aria-keyshortcuts="Alt+K"
        rightSection={
          <Kbd size="xs" aria-hidden>
            Alt K
          </Kbd>
        }
        onClick={onTake}
      >
        That’s who
      </Button>
    </Group>
  );
}
