import type { DemoGaugeCheck } from '../../../db/demo/gauges.ts';
import { idOf, type OpenShop } from './set-up.ts';
import type { Happening } from './tell-job.ts';

/** A check of a gauge at the end of its day, as whoever made it enters it. */
export const tellGaugeCheck = (
  { desk, clock, staff, gauges }: OpenShop,
  { gauge, on, by, due, ...found }: DemoGaugeCheck,
): Happening => ({
  at: clock.instant(on, '17:05'),
  pace: 30,
  happens: async () => {
    await desk.bench.checkGauge({
      by: idOf(staff, by),
      gaugeId: idOf(gauges, gauge),
      on: clock.date(on),
      dueOn: due === undefined ? null : clock.date(due),
      ...found,
    });
  },
});
