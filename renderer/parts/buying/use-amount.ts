import { useCallback } from 'react';
import { formatQuantity } from '../../../shared/money/index.ts';
import { useShop } from '../../common/shop.tsx';

/** Writes a quantity with its unit: `4.5 L`. */
export function useAmount(): (thousandths: number, unit: string) => string {
  const { locale } = useShop();
  return useCallback(
    (thousandths, unit) => `${formatQuantity(thousandths, locale)} ${unit}`,
    [locale],
  );
}
