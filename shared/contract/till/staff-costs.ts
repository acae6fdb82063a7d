import { z } from 'zod';
import { OWNER_WANTED, reads, writes } from '../base.ts';
import { Minor } from '../fields.ts';
import { StaffId } from '../ids.ts';

/** What an hour of somebody's costs the shop, minor units; zero where the shop's one figure stands. */
export const StaffCost = z.object({ staffId: StaffId, name: z.string(), hourlyCost: Minor });
export type StaffCost = z.infer<typeof StaffCost>;

export const staffCosts = {
  /** Of everybody who works here, by name; never on a paper. */
  staffCosts: reads.input(z.strictObject({})).output(z.array(StaffCost)),

  /** Hours that are clocked from now on, and margins of those before, go by it. */
  setStaffCost: writes
    .errors({ OWNER_WANTED })
    .input(z.strictObject({ by: StaffId, staffId: StaffId, hourlyCost: Minor }))
    .output(z.array(StaffCost)),
};
