import { tillRulesOf } from '../../../db/queries/till/rules.ts';
import { tillRules } from '../../../db/schema/index.ts';
import { os } from '../implementer.ts';
import { write } from '../writing.ts';

/** There is one set of rules in a store. */
const ONLY = 1;

const get = os.till.rules.handler(({ context }) => tillRulesOf(context.store.read));

const set = os.till.setRules.handler(({ input: { by, rules }, context, errors, path }) =>
  write(context, path, by, ({ store, staff, note }) => {
    if (staff.role !== 'owner') throw errors.OWNER_WANTED();
    store
      .insert(tillRules)
      .values({ only: ONLY, rules })
      .onConflictDoUpdate({ target: tillRules.only, set: { rules } })
      .run();
    note({ rules: JSON.stringify(rules) });
    return tillRulesOf(store);
  }),
);

export const rules = { rules: get, setRules: set };
