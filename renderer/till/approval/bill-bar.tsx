import { Text } from '@mantine/core';
import { IconAlertTriangle, IconCircleCheck, IconCircleDashed } from '@tabler/icons-react';
import { withoutPrice } from '../../../shared/work/till/at-least.ts';
import { useMoney } from '../../common/shop.tsx';
import classes from './bill-bar.module.css';
import { againstLimit } from './limit.ts';

interface BillBarProps {
  total: number;
  limit: number;
  /** Lines without a price: the total is the least that it can be. */
  unpriced: number;
}

/** The bill against what is approved: a bar, and the same in words. */
export function BillBar({ total, limit, unpriced }: BillBarProps) {
  const money = useMoney();
  const { over, room, stands, within, beyond, mark } = againstLimit(total, limit, unpriced);
  const settled = stands === 'within' && total !== 0;
  const Icon = over > 0 ? IconAlertTriangle : settled ? IconCircleCheck : IconCircleDashed;
  return (
    <div>
      <div className={classes.bar} aria-hidden>
        <div className={classes.within} style={{ width: `${within}%` }} />
        <div className={classes.beyond} style={{ width: `${beyond}%` }} />
        {limit > 0 && <div className={classes.mark} style={{ insetInlineStart: `${mark}%` }} />}
      </div>
      <Text component="p" m={0} mt={6} className={classes.words} data-over={over > 0}>
        <Icon size={20} aria-hidden />
        <span>{inWords()}</span>
      </Text>
    </div>
  );

  function inWords(): string {
    if (unpriced > 0) return unknownInWords();
    if (over > 0 && limit === 0)
      return `Nothing is approved yet, and the lines come to ${money(total)}. Ask before going on.`;
    if (over > 0)
      return `${money(total)} is ${money(over)} more than the approved ${money(limit)}. Ask again before going on.`;
    if (total === 0 && limit === 0) return 'Nothing is estimated and nothing is approved yet.';
    if (total === 0) return `Nothing is estimated yet; up to ${money(limit)} is approved.`;
    if (room === 0) return `${money(total)} is exactly what is approved.`;
    return `${money(total)} is ${money(room)} below the approved ${money(limit)}.`;
  }

  /** What has no price is unknown, and not nothing: only what is too much already is certain. */
  function unknownInWords(): string {
    const sum = money(total);
    if (over > 0 && limit === 0)
      return `Nothing is approved yet, and the lines come to at least ${sum}; ${withoutPrice(unpriced)}. Ask before going on.`;
    if (over > 0)
      return `At least ${sum} is at least ${money(over)} more than the approved ${money(limit)}; ${withoutPrice(unpriced)}. Ask again before going on.`;
    if (limit === 0) return `At least ${sum}; ${withoutPrice(unpriced)}. Nothing is approved yet.`;
    return `At least ${sum} of the approved ${money(limit)}; ${withoutPrice(unpriced)}. Set the price to see whether it stays within.`;
  }
}
