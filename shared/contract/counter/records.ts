import { z } from 'zod';
import { reads, writes } from '../base.ts';
import { maybeText } from '../fields.ts';
import { CustomerId, MachineId, StaffId } from '../ids.ts';
import { Customer, customerFields } from './customer.ts';
import { JobCard } from './job.ts';
import { engineFields, Machine, machineFields } from './machine.ts';

/** Customers and machines: found, added, revised. */

export const SERIAL_TAKEN = {
  status: 409,
  message:
    'A machine of this make has this serial number already. Find it by the number and use it, or mend the number.',
  data: z.object({ machineId: MachineId, customerName: z.string() }),
} as const;

export const records = {
  findCustomers: reads
    .input(z.strictObject({ text: maybeText(200), limit: z.int().min(1).max(500).default(50) }))
    .output(z.array(Customer)),

  customer: reads
    .input(z.strictObject({ id: CustomerId }))
    .output(z.object({ customer: Customer, machines: z.array(Machine), jobs: z.array(JobCard) })),

  addCustomer: writes.input(z.strictObject({ by: StaffId, ...customerFields })).output(Customer),

  reviseCustomer: writes
    .input(z.strictObject({ by: StaffId, id: CustomerId, ...customerFields }))
    .output(Customer),

  /** By serial number of machine or engine, make, model or owner; a customer's own when `customerId` is given. */
  findMachines: reads
    .input(
      z.strictObject({
        text: maybeText(200),
        customerId: CustomerId.nullable().default(null),
        limit: z.int().min(1).max(500).default(50),
      }),
    )
    .output(z.array(Machine)),

  addMachine: writes
    .errors({
      SERIAL_TAKEN,
    })
    .input(
      z.strictObject({
        by: StaffId,
        customerId: CustomerId,
        ...machineFields,
        engine: z.strictObject(engineFields),
      }),
    )
    .output(Machine),
};
