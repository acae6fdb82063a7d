import { z } from 'zod';
import { CORE_MOVEMENTS } from '../../work/parts/cores.ts';
import { reads, writes } from '../base.ts';
import { Instant, Minor, maybeText } from '../fields.ts';
import { JobId, PartId, StaffId, SupplierId } from '../ids.ts';
import { Thousandths } from './movements.ts';
import { PartName } from './numbers.ts';

/** Old parts that come in against a core charge and go back to the supplier. */

const CoreEvent = z.object({
  kind: z.enum(CORE_MOVEMENTS),
  quantity: z.int(),
  amount: z.int(),
  jobCode: z.string(),
  supplierName: z.string(),
  note: z.string(),
  by: z.string(),
  at: Instant,
});

export const PartCores = z.object({
  part: PartName,
  coreCharge: Minor,
  /** The supplier that the part names; null when nobody is known by that name. */
  supplierId: SupplierId.nullable(),
  /** In the shop, thousandths. */
  here: z.int(),
  /** With each supplier, neither credited nor refused, and what is expected for them. */
  away: z.array(
    z.object({
      supplierId: SupplierId,
      supplierName: z.string(),
      quantity: z.int(),
      expected: z.int(),
    }),
  ),
  /** What suppliers credited so far. */
  credited: z.int(),
  /** The newest first. */
  events: z.array(CoreEvent),
});
export type PartCores = z.infer<typeof PartCores>;

const MORE_THAN_HERE = {
  status: 409,
  message: 'Fewer old parts than that are in the shop. Count them, or take in what is missing.',
  data: z.object({ here: z.int() }),
} as const;

const MORE_THAN_AWAY = {
  status: 409,
  message: 'Fewer than that are with this supplier. Look again at what was sent back.',
  data: z.object({ away: z.int() }),
} as const;

export const cores = {
  /** Parts with old ones here or away first, then all that carry a core charge. */
  cores: reads.input(z.strictObject({})).output(z.array(PartCores)),

  takeInCore: writes
    .input(
      z.strictObject({
        by: StaffId,
        partId: PartId,
        quantity: Thousandths.default(1000),
        jobId: JobId.nullable().default(null),
        note: maybeText(300),
      }),
    )
    .output(PartCores),

  sendCoreBack: writes
    .errors({ MORE_THAN_HERE })
    .input(
      z.strictObject({
        by: StaffId,
        partId: PartId,
        supplierId: SupplierId,
        quantity: Thousandths,
        /** What the supplier is expected to credit for all of them. */
        expected: Minor,
        note: maybeText(300),
      }),
    )
    .output(PartCores),

  /** The supplier credited some of what was sent back, or refused it. */
  settleCore: writes
    .errors({ MORE_THAN_AWAY })
    .input(
      z.strictObject({
        by: StaffId,
        partId: PartId,
        supplierId: SupplierId,
        outcome: z.enum(['credited', 'refused']),
        quantity: Thousandths,
        /** What they credited for all of them; of refused ones it is left out. */
        amount: Minor.default(0),
        note: maybeText(300),
      }),
    )
    .output(PartCores),
};
