import { z } from 'zod';
import { JobId, PartId, SupplierId } from '../../../shared/contract/ids.ts';

/** An order that is being written: kept on this machine until it is sent. */

const DraftLine = z.object({
  partId: PartId,
  number: z.string(),
  description: z.string(),
  unit: z.string(),
  packSize: z.int(),
  supplierNumber: z.string(),
  /** Null while nothing that can be read stands there. */
  quantity: z.int().nullable(),
  unitCost: z.int().nullable(),
  jobId: JobId.nullable(),
  jobCode: z.string(),
});
export type DraftLine = z.infer<typeof DraftLine>;

const OrderDraft = z.object({
  supplierId: SupplierId.nullable(),
  lines: z.array(DraftLine),
  /** Null: by the supplier's terms. */
  carriage: z.int().nullable(),
  expectedOn: z.string().nullable(),
  note: z.string(),
});
export type OrderDraft = z.infer<typeof OrderDraft>;

export const NO_ORDER: OrderDraft = {
  supplierId: null,
  lines: [],
  carriage: null,
  expectedOn: null,
  note: '',
};

/** What another page hands over to the page of a new order, by the address's state. */
export const OrderSeed = z.object({ key: z.string(), order: OrderDraft });
export type OrderSeed = z.infer<typeof OrderSeed>;

/** Lines of one part for one job are one line. */
export function withLine(lines: readonly DraftLine[], added: DraftLine): DraftLine[] {
  const same = lines.findIndex(
    ({ partId, jobId }) => partId === added.partId && jobId === added.jobId,
  );
  if (same < 0) return [...lines, added];
  return lines.map((line, place) =>
    place === same ? { ...line, quantity: (line.quantity ?? 0) + (added.quantity ?? 0) } : line,
  );
}
