import { useCallback } from 'react';
import { useShop } from '../../common/shop.tsx';

/** Writes a whole number as people of this shop read it: `98,900`. */
export function useCount(): (count: number) => string {
  const { locale } = useShop();
  return useCallback((count: number) => new Intl.NumberFormat(locale).format(count), [locale]);
}
