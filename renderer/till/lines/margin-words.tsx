import { type BillMargin, formatRate } from '../../../shared/money/index.ts';
import { useMoney, useShop } from '../../common/shop.tsx';

/** What is left after the cost, in words, for the shop's own eyes. */
export function MarginWords({ margin }: { margin: BillMargin }) {
  const money = useMoney();
  const { locale } = useShop();
  const { sales, margin: left, ppm, unknown } = margin;
  if (sales === 0 && margin.cost === 0) return <>Nothing is sold yet.</>;
  if (unknown > 0 && margin.cost === 0) return <>What it costs the shop is not known.</>;
  // A tenth of a per cent is as fine as anybody prices.
  const share = ppm === null ? '' : `, ${formatRate(Math.round(ppm / 1_000) * 1_000, locale)}`;
  return (
    <>
      {left < 0 ? `The shop loses ${money(-left)}` : `Leaves the shop ${money(left)}${share}`}
      {unknown === 1 && '; the cost of one line is not known'}
      {unknown > 1 && `; the costs of ${unknown} lines are not known`}.
    </>
  );
}
