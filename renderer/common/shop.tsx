import { createContext, type ReactNode, useCallback, useContext } from 'react';
import type { Shop } from '../../shared/contract/office.ts';
import { formatMoney } from '../../shared/money/format.ts';

interface ShopNow {
  shop: Shop;
  /** The calendar date in the shop's time zone. */
  today: string;
}

const ShopContext = createContext<ShopNow | null>(null);

export function ShopProvider({ shop, today, children }: ShopNow & { children: ReactNode }) {
  return <ShopContext value={{ shop, today }}>{children}</ShopContext>;
}

function useShopNow(): ShopNow {
  const now = useContext(ShopContext);
  if (now === null) throw new Error('useShop is called outside ShopProvider.');
  return now;
}

/** The shop's settings; pages are shown only once they are known. */
export function useShop(): Shop {
  return useShopNow().shop;
}

/** Today's calendar date where the shop is, `2026-11-25`. */
export function useToday(): string {
  return useShopNow().today;
}

/** Writes minor units as people read an amount, in the shop's currency. */
export function useMoney(): (minor: number) => string {
  const { currency, locale } = useShop();
  return useCallback((minor: number) => formatMoney(minor, currency, locale), [currency, locale]);
}
