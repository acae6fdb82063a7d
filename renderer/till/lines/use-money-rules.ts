import { useMemo } from 'react';
import { useShop } from '../../common/shop.tsx';
import type { MoneyRules } from './draft-line.ts';

/** How this shop writes and rounds money. */
export function useMoneyRules(): MoneyRules {
  const { currency, locale, rounding, labourRate } = useShop();
  return useMemo(
    () => ({ currency, locale, rounding, labourRate }),
    [currency, locale, rounding, labourRate],
  );
}
