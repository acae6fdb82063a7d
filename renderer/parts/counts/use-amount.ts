import { formatQuantity } from '../../../shared/money/index.ts';
import { useShop } from '../../common/shop.tsx';

/** A quantity as it is read: `4 pc`, and with its sign where it is a difference: `−1 pc`. */
export function useAmount() {
  const { locale } = useShop();
  const amount = (thousandths: number, unit: string): string =>
    `${thousandths < 0 ? '−' : ''}${formatQuantity(Math.abs(thousandths), locale)} ${unit}`;
  const signed = (thousandths: number, unit: string): string =>
    `${thousandths > 0 ? '+' : ''}${amount(thousandths, unit)}`;
  return { amount, signed };
}
