import { Text } from '@mantine/core';
import type { BillAhead } from '../../../shared/contract/till/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { BEYOND_BECAUSE, BEYOND_BECAUSE_LABELS } from '../../../shared/work/till/bill-ahead.ts';
import { useMoney, useShop } from '../../common/shop.tsx';
import classes from './limit.module.css';

/** What came to the bill since the estimate, by where it came from. */
export function BeyondList({ ahead }: { ahead: BillAhead }) {
  const money = useMoney();
  const { locale } = useShop();
  return (
    <dl className={classes.beyond}>
      {BEYOND_BECAUSE.map((because) => {
        const lines = ahead.beyond.filter((each) => each.because === because);
        if (lines.length === 0) return null;
        return (
          <div key={because}>
            <dt>{BEYOND_BECAUSE_LABELS[because]}</dt>
            {lines.map(({ line, priceToSet }) => (
              <dd key={line.description}>
                <Text size="sm" span>
                  {formatQuantity(line.quantity, locale)} {line.unit} {line.description}
                </Text>
                <Text size="sm" span fw={500}>
                  {priceToSet ? 'price to be set' : money(line.amount)}
                </Text>
              </dd>
            ))}
          </div>
        );
      })}
    </dl>
  );
}
