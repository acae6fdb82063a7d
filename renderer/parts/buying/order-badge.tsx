import { Badge, Group } from '@mantine/core';
import {
  IconCircleCheck,
  IconCircleHalf2,
  IconClockExclamation,
  IconTruck,
} from '@tabler/icons-react';
import type { PurchaseOrderCard } from '../../../shared/contract/parts/index.ts';
import { ORDER_STATE_LABELS } from '../../../shared/work/parts/order-state.ts';

const LOOKS = {
  awaited: { icon: IconTruck, color: 'indigo' },
  'part-in': { icon: IconCircleHalf2, color: 'orange' },
  complete: { icon: IconCircleCheck, color: 'green' },
} as const;

/** How far an order has come, in a word, a shape and a colour; and whether it is late. */
export function OrderBadge({ order }: { order: Pick<PurchaseOrderCard, 'state' | 'late'> }) {
  const { icon: Icon, color } = LOOKS[order.state];
  return (
    <Group gap={6}>
      <Badge variant="light" color={color} leftSection={<Icon size={15} aria-hidden />}>
        {ORDER_STATE_LABELS[order.state]}
      </Badge>
      {order.late && <LateBadge />}
    </Group>
  );
}

/** The day that it was expected on has passed. */
export function LateBadge() {
  return (
    <Badge variant="light" color="red" leftSection={<IconClockExclamation size={15} aria-hidden />}>
      Late
    </Badge>
  );
}
