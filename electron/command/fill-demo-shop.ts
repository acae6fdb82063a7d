import { DEMO_SHOP } from '../../db/demo/shop.ts';
import { staffList } from '../../db/queries/office.ts';
import type { DeskContext } from '../desk/index.ts';
import { deskClient } from './demo-shop/client.ts';
import { someoneAtWork } from './demo-shop/clocked.ts';
import { happeningsOf } from './demo-shop/happenings.ts';
import { tellParts } from './demo-shop/part-facts.ts';
import { agreeTerms, setPrices } from './demo-shop/prices.ts';
import { ALL_STOCK, idOf, markAsDemo, openDemoShop } from './demo-shop/set-up.ts';
import { StoryClock } from './demo-shop/story-clock.ts';

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
  for (const { at, pace, happens } of happeningsOf(shop, known)) {
    clock.goTo(at, pace);
    await happens();
  }
  await agreeTerms(shop, known.customers);
  clock.goTo(new Date(context.now().getTime() - AT_WORK_FOR));
  await someoneAtWork(shop, 'wren');
  markAsDemo(context);
}
