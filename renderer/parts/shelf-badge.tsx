import { Badge } from '@mantine/core';
import { IconAlertCircle, IconCircleX } from '@tabler/icons-react';
import { shelfLevel } from './stock.ts';

/** Says in a word, a shape and a colour that a shelf wants filling; nothing while there is enough. */
export function ShelfBadge({ part }: { part: { onHand: number; reorderPoint: number } }) {
  const level = shelfLevel(part);
  if (level === 'enough') return null;
  const none = level === 'none-left';
  const Icon = none ? IconCircleX : IconAlertCircle;
  return (
    <Badge
      variant="light"
      color={none ? 'red' : 'orange'}
      leftSection={<Icon size={15} aria-hidden />}
    >
      {none ? 'None left' : 'Reorder'}
    </Badge>
  );
}
