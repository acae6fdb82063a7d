import { TillRules } from '../../../shared/contract/till/rules.ts';
import { tillRules } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/** How the shop prices: what was set, and for all else the defaults of the contract. */
export const tillRulesOf = (store: ReadStore): TillRules =>
  TillRules.parse(store.select().from(tillRules).get()?.rules ?? {});
