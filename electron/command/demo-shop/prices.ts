import type { DEMO_CUSTOMERS } from '../../../db/demo/customers.ts';
import { demoPart } from '../../../db/demo/parts.ts';
import { DEMO_BUNDLES, DEMO_CORES, DEMO_RULES, DEMO_TERMS } from '../../../db/demo/prices.ts';
import { DEMO_SHOP } from '../../../db/demo/shop.ts';
import { idOf, type OpenShop, partId } from './set-up.ts';

const ONE = 1000;

/** The owner says how the shop prices, and keeps the lines that are used again and again. */
export async function setPrices(shop: OpenShop): Promise<void> {
  const { desk, staff } = shop;
  const by = idOf(staff, 'ruth');
  await desk.till.setRules({ by, rules: DEMO_RULES });
  for (const { part, charge } of DEMO_CORES) {
    const { price, cost } = demoPart(part);
    await desk.parts.reprice({ by, partId: partId(shop, part), price, cost, coreCharge: charge });
  }
  for (const { name, note, labour, parts } of DEMO_BUNDLES)
    await desk.till.saveBundle({
      by,
      name,
      note,
      lines: [
        ...labour.map(({ what, hours, workKind }) => ({
          kind: 'labour' as const,
          description: what,
          quantity: Math.round(hours * ONE),
          unit: 'h',
          unitPrice: DEMO_SHOP.labourRate,
          unitCost: DEMO_RULES.labourCost ?? null,
          priceFrom: 'labour-rate' as const,
          workKind,
        })),
        ...parts.map(({ number, count }) => ({
          kind: 'part' as const,
          description: demoPart(number).description,
          partId: partId(shop, number),
          quantity: count * ONE,
          unitPrice: demoPart(number).price,
          priceFrom: 'shelf-price' as const,
        })),
      ],
    });
}

/** What was agreed with some customers about tax and payment, once they are known. */
export async function agreeTerms(
  { desk, staff, clock }: OpenShop,
  customers: ReadonlyMap<string, string>,
): Promise<void> {
  for (const key of Object.keys(DEMO_TERMS) as (keyof typeof DEMO_CUSTOMERS)[]) {
    const { exemptForDays, ...terms } = DEMO_TERMS[key] ?? {};
    await desk.till.setCustomerTerms({
      by: idOf(staff, 'ruth'),
      customerId: idOf(customers, key),
      ...terms,
      exemptUntil: exemptForDays === undefined ? null : clock.date(exemptForDays),
    });
  }
}
