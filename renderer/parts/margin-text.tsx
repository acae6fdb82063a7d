import { Text } from '@mantine/core';
import { formatQuantity, marginPpm } from '../../shared/money/index.ts';
import { useMoney, useShop } from '../common/shop.tsx';

/** What is left of the price after the cost, for the shop's own eyes; nothing while one is missing. */
export function MarginText({ price, cost }: { price: number | null; cost: number | null }) {
  const money = useMoney();
  const { locale, rounding } = useShop();
  if (price === null || cost === null || cost === 0) return null;
  const share = marginPpm(price, cost, rounding);
  if (share === null) return null;
  // A tenth of a per cent is as fine as anybody prices.
  const tenths = Math.round(share / 1_000);
  return (
    <Text size="sm" c="dimmed">
      {price < cost ? 'Sold below cost: ' : 'Margin '}
      {money(price - cost)}, {formatQuantity(tenths * 100, locale)} % of the price. Never on a
      customer’s paper.
    </Text>
  );
}
