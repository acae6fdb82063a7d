import { eq } from 'drizzle-orm';
import { gaugeById, gaugeList } from '../../../db/queries/bench.ts';
import { shopOf } from '../../../db/queries/office.ts';
import { gauge as gaugeTable } from '../../../db/schema/index.ts';
import { dateIn } from '../../../shared/work/calendar.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';

export const gauges = os.bench.gauges.handler(({ context: { store, now } }) =>
  gaugeList(store.read, dateIn(shopOf(store.read).timeZone, now())),
);

export const addGauge = os.bench.addGauge.handler(
  ({ input: { by, ...facts }, context, errors, path }) =>
    write(context, path, by, ({ store, today, newId, note }) => {
      if (store.select().from(gaugeTable).where(eq(gaugeTable.name, facts.name)).get())
        throw errors.GAUGE_NAME_TAKEN();
      const id = newId();
      store
        .insert(gaugeTable)
        .values({ id, ...facts })
        .run();
      note({ gauge: id, name: facts.name });
      return found(gaugeById(store, id, today), 'gauge');
    }),
);
