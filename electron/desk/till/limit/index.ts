import { accountOf } from '../../../../db/queries/till/account.ts';
import { limitOverride } from '../../../../db/schema/index.ts';
import { os } from '../../implementer.ts';
import { found } from '../../refuse.ts';
import { write } from '../../writing.ts';
import { openAccount } from '../open-account.ts';
import { billAheadOf } from './bill-ahead.ts';

const billAhead = os.till.billAhead.handler(({ input: { jobId }, context: { store, now } }) =>
  billAheadOf(store.read, jobId, now()),
);

const overrideLimit = os.till.overrideLimit.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, staff, at, newId, note } = writing;
    const { jobId, amount, reason } = input;
    if (staff.role !== 'owner') throw errors.OWNER_WANTED();
    const { approvedLimit: limit } = openAccount(writing, jobId, errors);
    if (amount <= limit) throw errors.LIMIT_NOT_RAISED({ data: { limit } });
    store
      .insert(limitOverride)
      .values({ id: newId(), jobId, amount, reason, by: staff.id, at })
      .run();
    note({ job: jobId, amount, before: limit, reason });
    return found(accountOf(store, jobId), 'job');
  }),
);

export const limit = { billAhead, overrideLimit };
