import type { StoryLine } from '../../../db/demo/jobs/index.ts';
import { demoPart } from '../../../db/demo/parts.ts';
import { BENCH_WORK, DEMO_RULES } from '../../../db/demo/prices.ts';
import { DEMO_SHOP } from '../../../db/demo/shop.ts';
import { type OpenShop, partId } from './set-up.ts';

const ONE = 1000;

/** Lines of a bill, from what the story says of them. */
export const billLines = (shop: OpenShop, lines: readonly StoryLine[]) =>
  lines.map((line) => {
    switch (line.kind) {
      case 'labour':
        return {
          kind: line.kind,
          description: line.what,
          quantity: Math.round(line.hours * ONE),
          unit: 'h',
          unitPrice: DEMO_SHOP.labourRate,
          unitCost: DEMO_RULES.labourCost ?? null,
          priceFrom: 'labour-rate' as const,
          workKind: BENCH_WORK,
        };
      case 'part': {
        const { description, price, cost } = demoPart(line.number);
        return {
          kind: line.kind,
          description,
          partId: partId(shop, line.number),
          quantity: line.count * ONE,
          unit: 'pc',
          unitPrice: price,
          unitCost: cost,
          priceFrom: 'shelf-price' as const,
        };
      }
      default:
        return {
          kind: line.kind,
          description: line.what,
          quantity: ONE,
          unit: 'pc',
          unitPrice: line.price,
        };
    }
  });

/** Takes the parts of a bill off the shelf for a job. */
export async function issueParts(
  shop: OpenShop,
  by: string,
  jobId: string,
  lines: readonly StoryLine[],
): Promise<void> {
  for (const line of lines)
    if (line.kind === 'part')
      await shop.desk.parts.move({
        by,
        jobId,
        partId: partId(shop, line.number),
        kind: 'issued',
        quantity: line.count * ONE,
      });
}
