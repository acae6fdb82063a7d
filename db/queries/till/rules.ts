import { TillRules } from '../../../shared/contract/till/rules.ts';
import { prepared } from '../../prepared.ts';
import { tillRules } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

const rulesRow = prepared((store) => store.select().from(tillRules).prepare());

/** How the shop prices: what was set, and for all else the defaults of the contract. */
export const tillRulesOf = (store: ReadStore): TillRules =>
  TillRules.parse(rulesRow(store).get()?.rules ?? {});
