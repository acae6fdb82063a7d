import type { JobId, PartId } from '../../shared/contract/ids.ts';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

/** A small shop with what tests of the parts room ask for again and again. */
export interface PartsShop extends TestShop {
  /** A part with so many thousandths on the shelf. */
  shelve: (number: string, onHand?: number, more?: { cost?: number }) => Promise<PartId>;
  /** A job whose customer approved lines for these parts. */
  jobFor: (needed: readonly Need[]) => Promise<JobId>;
  /** A new estimate for these parts, approved. */
  approve: (jobId: JobId, needed: readonly Need[]) => Promise<void>;
  /** On hand, promised, on order and worth. */
  sums: (partId: PartId) => Promise<[number, number, number, number]>;
}

type Need = readonly [partId: PartId, quantity: number];

export async function openPartsShop(
  options?: Parameters<typeof openTestShop>[0],
): Promise<PartsShop> {
  const shop = await openTestShop(options);
  const { desk, by } = shop;
  let serial = 0;

  const approve = async (jobId: JobId, needed: readonly Need[]) => {
    const { estimates } = await desk.till.writeEstimate({
      by,
      jobId,
      lines: needed.map(([partId, quantity]) => ({
        kind: 'part',
        description: 'Part',
        partId,
        quantity,
        unitPrice: 100,
      })),
    });
    const latest = estimates.at(-1);
    if (latest === undefined) throw new Error('No estimate was written.');
    await desk.till.approve({
      by,
      jobId,
      estimateId: latest.id,
      how: 'telephone',
      approvedBy: 'Greta Lindqvist',
      amount: 100_000_000_000,
    });
  };

  return {
    ...shop,
    approve,
    shelve: async (number, onHand = 0, more = {}) => {
      const { id } = await desk.parts.add({ by, number, description: number, price: 100, ...more });
      if (onHand > 0) await desk.parts.move({ by, partId: id, kind: 'received', quantity: onHand });
      return id;
    },
    jobFor: async (needed) => {
      serial += 1;
      const intake = plainIntake(by);
      const machine = { ...intake.machine, serial: `FM-6 ${serial}` };
      const { jobId } = await desk.counter.takeIn({ ...intake, machine });
      await approve(jobId, needed);
      return jobId;
    },
    sums: async (partId) => {
      const { part } = await desk.parts.part({ id: partId });
      return [part.onHand, part.promised, part.onOrder, part.worth];
    },
  };
}
