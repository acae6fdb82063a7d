import { AGE_LABELS, AGES, type AgedAmounts } from '../../../shared/money/books/index.ts';
import { useMoney } from '../../common/shop.tsx';
import classes from './books.module.css';

/** What is open by age, side by side, and what it comes to. */
export function AgeStrip({
  aged,
  sum,
}: {
  aged: AgedAmounts;
  sum: { label: string; amount: number };
}) {
  const money = useMoney();
  return (
    <dl className={classes.strip}>
      {AGES.map((age) => (
        <div key={age} className={classes.stripItem} data-late={age !== 'not-due' && aged[age] > 0}>
          <dt>{AGE_LABELS[age]}</dt>
          <dd>{money(aged[age])}</dd>
        </div>
      ))}
      <div className={classes.stripItem} data-sum>
        <dt>{sum.label}</dt>
        <dd>{money(sum.amount)}</dd>
      </div>
    </dl>
  );
}
