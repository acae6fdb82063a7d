import { DEMO_COUNTS } from '../../db/demo/drawer.ts';
import { DEMO_GAUGE_CHECKS } from '../../db/demo/gauges.ts';
import { DEMO_JOBS } from '../../db/demo/jobs/index.ts';
import { DEMO_ORDERS } from '../../db/demo/orders.ts';
import { DEMO_SHOP } from '../../db/demo/shop.ts';
import { DEMO_STOCK_COUNTS } from '../../db/demo/stock-counts.ts';
import { staffList } from '../../db/queries/office.ts';
import type { DeskContext } from '../desk/index.ts';
import { tellOldParts, tellOrder } from './demo-shop/buying.ts';
import { deskClient } from './demo-shop/client.ts';
import { someoneAtWork } from './demo-shop/clocked.ts';
import { tellParts } from './demo-shop/part-facts.ts';
import { agreeTerms, setPrices } from './demo-shop/prices.ts';
import { ALL_STOCK, idOf, markAsDemo, openDemoShop } from './demo-shop/set-up.ts';
import { StoryClock } from './demo-shop/story-clock.ts';
import { tellDrawer } from './demo-shop/tell-drawer.ts';
import { tellGaugeCheck } from './demo-shop/tell-gauge-check.ts';
import { tellJob } from './demo-shop/tell-job.ts';
import { tellPriceFiles } from './demo-shop/tell-price-files.ts';
import { tellStockCount } from './demo-shop/tell-stock-count.ts';

/** Days before today on which the invented shop opened: a little more than eight months. */
const OPENED = 246;

/** How long somebody has been at work when the shop is opened, milliseconds. */
const AT_WORK_FOR = 47 * 60_000;

/**
 * Fills a new store with the invented shop. Everything goes through the contract, as a screen would do it:
 * papers, approvals, hold points and journal are real. Only the clock is told: forty jobs lie in the eight
 * months before the context's today, in the order in which they happened. A store that has staff is left
 * alone.
 */
export async function fillDemoShop(context: DeskContext): Promise<void> {
  if (staffList(context.store.read).length > 0) return;
  const clock = new StoryClock(context.now(), DEMO_SHOP.timeZone, OPENED);
  const desk = deskClient({ ...context, now: clock.now });
  const shop = await openDemoShop(desk, clock, ALL_STOCK);
  await tellParts(desk, idOf(shop.staff, 'ruth'), shop);
  await setPrices(shop);
  const known = { customers: new Map<string, string>(), machines: new Map<string, string>() };
  const happenings = [
    ...DEMO_JOBS.flatMap((story) => tellJob(shop, known, story)),
    ...DEMO_GAUGE_CHECKS.map((check) => tellGaugeCheck(shop, check)),
    ...DEMO_ORDERS.flatMap((order) => tellOrder(shop, order)),
    ...tellOldParts(shop),
    ...tellPriceFiles(shop),
    ...DEMO_COUNTS.map((count) => tellDrawer(shop, count)),
    ...DEMO_STOCK_COUNTS.map((count) => tellStockCount(shop, count)),
  ];
  for (const { at, pace, happens } of happenings.sort((a, b) => a.at.getTime() - b.at.getTime())) {
    clock.goTo(at, pace);
    await happens();
  }
  await agreeTerms(shop, known.customers);
  clock.goTo(new Date(context.now().getTime() - AT_WORK_FOR));
  await someoneAtWork(shop, 'wren');
  markAsDemo(context);
}
