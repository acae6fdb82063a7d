import { DEMO_FLOAT, type DemoCount } from '../../../db/demo/drawer.ts';
import { idOf, type OpenShop } from './set-up.ts';
import type { Happening } from './tell-job.ts';

/** The drawer counted after closing: what the till says, but for a slip. */
export const tellDrawer = (
  { desk, clock, staff }: OpenShop,
  { on, by, off, note }: DemoCount,
): Happening => ({
  at: clock.instant(on, '17:40'),
  pace: 30,
  happens: async () => {
    const day = clock.date(on);
    const { taken } = await desk.till.drawer({ day });
    await desk.till.cashUp({
      by: idOf(staff, by),
      day,
      opening: DEMO_FLOAT,
      counted: { ...taken, cash: taken.cash + DEMO_FLOAT + off },
      note,
    });
  },
});
