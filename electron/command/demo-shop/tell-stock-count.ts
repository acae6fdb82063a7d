import type { DemoStockCount } from '../../../db/demo/stock-counts.ts';
import { idOf, type OpenShop } from './set-up.ts';
import type { Happening } from './tell-job.ts';

const ONE = 1000;

/** A rack counted after closing, its differences explained as far as somebody knew. */
export const tellStockCount = (
  { desk, clock, staff }: OpenShop,
  { on, by: key, rack, slips }: DemoStockCount,
): Happening => ({
  at: clock.instant(on, '18:05'),
  pace: 30,
  happens: async () => {
    const by = idOf(staff, key);
    const { id: countId, lines } = await desk.parts.openCount({ by, bin: rack });
    for (const { partId, number } of lines) {
      const { onHand } = (await desk.parts.part({ id: partId })).part;
      const off = slips.find((slip) => slip.number === number)?.off ?? 0;
      const counted = Math.max(0, onHand + off * ONE);
      await desk.parts.countPart({ by, countId, partId, counted });
    }
    const closed = await desk.parts.closeCount({ by, countId });
    for (const { partId, number, outcome } of closed.lines) {
      const explanation = slips.find((slip) => slip.number === number)?.why ?? '';
      if (explanation === '' || outcome === null || outcome.difference === 0) continue;
      await desk.parts.explainDifference({ by, countId, partId, explanation });
    }
  },
});
