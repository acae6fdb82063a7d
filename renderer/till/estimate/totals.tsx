import { Text } from '@mantine/core';
import type { Totals } from '../../../shared/contract/till/index.ts';
import { formatRate, roundingSentence } from '../../../shared/money/index.ts';
import { atLeast, withoutPrice } from '../../../shared/work/till/at-least.ts';
import { useMoney, useShop } from '../../common/shop.tsx';
import classes from './totals.module.css';

interface TotalsListProps {
  totals: Totals;
  unpriced?: number;
  uncounted?: number;
}

/**
 * Subtotal, each tax and the total, figures under each other; the rounding rule below.
 * `unpriced` lines have no price yet and `uncounted` ones can't be read: neither are in the figures, which are
 * the least that it can be.
 */
export function TotalsList({ totals, unpriced = 0, uncounted = 0 }: TotalsListProps) {
  const money = useMoney();
  const { locale, rounding, taxBasis } = useShop();
  return (
    <div className={classes.totals}>
      <dl className={classes.list}>
        <dt>Subtotal</dt>
        <dd>{atLeast(money(totals.subtotal), unpriced + uncounted)}</dd>
        {totals.discount > 0 && (
          <>
            <dt>Discount</dt>
            <dd>{money(-totals.discount)}</dd>
          </>
        )}
        {totals.taxes.map((tax) => (
          <div key={`${tax.name} ${tax.ratePpm}`} className={classes.tax}>
            <dt>
              {totals.pricesIncludeTax && 'Within it: '}
              {tax.name} {formatRate(tax.ratePpm, locale)} on {money(tax.base)}
            </dt>
            <dd>{money(tax.amount)}</dd>
          </div>
        ))}
        {totals.takenOut.map((tax) => (
          <div key={`${tax.name} ${tax.ratePpm}`} className={classes.tax}>
            <dt>
              {tax.name} {formatRate(tax.ratePpm, locale)} taken out of {money(tax.base)}
            </dt>
            <dd>{money(-tax.amount)}</dd>
          </div>
        ))}
        <dt className={classes.total}>Total</dt>
        <dd className={classes.total}>{atLeast(money(totals.total), unpriced + uncounted)}</dd>
      </dl>
      {totals.exemptBy !== '' && (
        <Text size="sm" ta="end">
          No tax: certificate {totals.exemptBy}
        </Text>
      )}
      {unpriced > 0 && (
        <Text size="sm" fw={500} ta="end">
          {withoutPrice(unpriced)}: the total leaves {unpriced === 1 ? 'it' : 'them'} out.
        </Text>
      )}
      {uncounted > 0 && (
        <Text size="sm" fw={500} ta="end">
          {uncounted === 1
            ? 'One line can’t be read and is not counted.'
            : `${uncounted} lines can’t be read and are not counted.`}
        </Text>
      )}
      {totals.taxes.length > 0 && (
        <Text size="xs" c="dimmed" ta="end">
          {roundingSentence({ rounding, basis: taxBasis })}
        </Text>
      )}
    </div>
  );
}
