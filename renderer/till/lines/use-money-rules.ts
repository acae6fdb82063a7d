import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { TillRules } from '../../../shared/contract/till/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { useShop } from '../../common/shop.tsx';
import type { MoneyRules } from './draft-line.ts';

/** How a shop prices that has set nothing; also what holds until its rules are here. */
const NO_RULES = TillRules.parse({});

/** How this shop writes, rounds and prices. */
export function useMoneyRules(): MoneyRules {
  const { currency, locale, rounding, labourRate } = useShop();
  const { data: rules = NO_RULES } = useQuery(deskQuery.till.rules.queryOptions({ input: {} }));
  return useMemo(() => {
    const { labourRates, labourCost, outsideMarkupPpm, supplies } = rules;
    return {
      currency,
      locale,
      rounding,
      labourRate,
      labourRates,
      labourCost,
      outsideMarkupPpm,
      supplies,
    };
  }, [currency, locale, rounding, labourRate, rules]);
}
