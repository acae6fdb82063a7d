import { Text } from '@mantine/core';
import { useMoney, useShop } from '../../common/shop.tsx';
import { writeDiscount } from './discount-text.ts';
import type { DraftLine } from './draft-line.ts';

/** What stands behind a line, in a few words below it while its details are closed. */
export function LineSummary({ line }: { line: DraftLine }) {
  const shop = useShop();
  const money = useMoney();
  const { workKind, discount, note, priceFrom } = line.behind;
  const off =
    discount === null
      ? []
      : [
          `less ${discount.by === 'amount' ? money(discount.amount) : writeDiscount(discount, shop)}`,
        ];
  const words = [
    ...(workKind === '' ? [] : [workKind]),
    ...(priceFrom === 'supplies-rule' ? ['by the shop’s rule'] : []),
    ...off,
    ...(note === '' ? [] : [note]),
  ];
  if (words.length === 0) return null;
  return (
    <Text size="xs" c="dimmed">
      {words.join(' · ')}
    </Text>
  );
}
