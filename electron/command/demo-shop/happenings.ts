import { DEMO_COUNTS } from '../../../db/demo/drawer.ts';
import { DEMO_GAUGE_CHECKS } from '../../../db/demo/gauges.ts';
import { DEMO_JOBS } from '../../../db/demo/jobs/index.ts';
import { DEMO_ORDERS } from '../../../db/demo/orders.ts';
import { DEMO_STOCK_COUNTS } from '../../../db/demo/stock-counts.ts';
import { tellOldParts, tellOrder } from './buying.ts';
import type { OpenShop } from './set-up.ts';
import { tellDrawer } from './tell-drawer.ts';
import { tellGaugeCheck } from './tell-gauge-check.ts';
import { type Happening, type Known, tellJob } from './tell-job.ts';
import { tellPriceFiles } from './tell-price-files.ts';
import { tellStockCount } from './tell-stock-count.ts';

/**
 * All that happened in the invented shop, in the order of its time. The order is that of the stories' days
 * and times of day, and so the same on whatever day it is told.
 */
export function happeningsOf(shop: OpenShop, known: Known): Happening[] {
  return [
    ...DEMO_JOBS.flatMap((story) => tellJob(shop, known, story)),
    ...DEMO_GAUGE_CHECKS.map((check) => tellGaugeCheck(shop, check)),
    ...DEMO_ORDERS.flatMap((order) => tellOrder(shop, order)),
    ...tellOldParts(shop),
    ...tellPriceFiles(shop),
    ...DEMO_COUNTS.map((count) => tellDrawer(shop, count)),
    ...DEMO_STOCK_COUNTS.map((count) => tellStockCount(shop, count)),
  ].sort((a, b) => a.at.getTime() - b.at.getTime());
}
