import type { SupplierName } from '../../../db/demo/parts.ts';
import { DEMO_SUPPLIERS } from '../../../db/demo/suppliers.ts';
import type { DeskClient } from './client.ts';

/** Enters who the shop buys from. */
export async function enterSuppliers(
  desk: DeskClient,
  by: string,
): Promise<Map<SupplierName, string>> {
  const ids = new Map<SupplierName, string>();
  for (const name of Object.keys(DEMO_SUPPLIERS) as SupplierName[]) {
    const { id } = await desk.parts.addSupplier({ by, name, ...DEMO_SUPPLIERS[name] });
    ids.set(name, id);
  }
  return ids;
}
