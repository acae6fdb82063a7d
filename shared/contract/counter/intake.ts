import { z } from 'zod';
import { REACH_BY, SYMPTOMS } from '../../work/vocabulary.ts';
import { writes } from '../base.ts';
import { CalendarDate, Minor, maybeText, SignatureInput, text } from '../fields.ts';
import { CustomerId, JobCode, JobId, MachineId, StaffId } from '../ids.ts';
import { customerFields } from './customer.ts';
import { PaperCard } from './job.ts';
import { engineFields, machineFields } from './machine.ts';
import { SERIAL_TAKEN } from './records.ts';

/** Intake: customer, machine and job in one call, with claim ticket and tag. */

const EngineHours = z
  .number('Give the running hours as a number, or leave them empty.')
  .min(0, 'Running hours are zero or more.')
  .max(100_000, 'No small engine runs that long; give its hours.');

const customerChoice = z.discriminatedUnion('which', [
  z.strictObject({ which: z.literal('known'), id: CustomerId }),
  z.strictObject({ which: z.literal('new'), ...customerFields }),
]);

const machineChoice = z.discriminatedUnion('which', [
  z.strictObject({
    which: z.literal('known'),
    id: MachineId,
    /** It was somebody else's and is now the customer's who brings it. */
    changedHands: z.boolean().default(false),
    /** It is in the shop on an open job, and another is opened all the same. */
    takeInAgain: z.boolean().default(false),
  }),
  z.strictObject({
    which: z.literal('new'),
    ...machineFields,
    engine: z.strictObject(engineFields),
  }),
]);

/** What is said and seen at intake, and can turn out to be otherwise. */
export const intakeFields = {
  /** In the customer's words. */
  complaint: text(2000),
  symptoms: z.array(z.enum(SYMPTOMS)).max(SYMPTOMS.length).default([]),
  condition: maybeText(2000),
  /** Key, bag, blade, charger … */
  leftWith: z.array(text(80)).max(30).default([]),
  /** What is in the tank and how old it is. */
  fuel: maybeText(200),
  lastService: maybeText(200),
  /** Running hours of the engine, from its meter or the customer; null when nobody knows. */
  engineHours: EngineHours.nullable().default(null),
  reachBy: z.enum(REACH_BY).default('telephone'),
};

export const TakeIn = z.strictObject({
  by: StaffId,
  customer: customerChoice,
  machine: machineChoice,
  ...intakeFields,
  diagnosisFee: Minor.nullable().default(null),
  /** What may be spent without a further call; counts as the first approval. */
  spendingLimit: Minor.nullable().default(null),
  /** A deposit agreed; it is taken at the till. */
  deposit: Minor.nullable().default(null),
  promisedFor: CalendarDate.nullable().default(null),
  signature: SignatureInput,
});

const Taken = z.object({
  jobId: JobId,
  number: z.int(),
  code: JobCode,
  customerId: CustomerId,
  machineId: MachineId,
  claimTicket: PaperCard,
  tag: PaperCard,
});

export const PROMISED_IN_THE_PAST = {
  status: 409,
  message: 'The promised date is past. Choose today or a later day.',
} as const;

export const intake = {
  /** The whole intake in one: customer, machine, job, claim ticket and tag, or none of them. */
  takeIn: writes
    .errors({
      SERIAL_TAKEN,
      OWNED_BY_ANOTHER: {
        status: 409,
        message:
          'This machine is on record for somebody else. Choose them as the customer, or say that it changed hands.',
        data: z.object({ customerName: z.string() }),
      },
      ALREADY_IN_THE_SHOP: {
        status: 409,
        message:
          'This machine is in the shop on an open job. Go on with that job, or say that it is taken in again.',
        data: z.object({ jobCode: JobCode }),
      },
      PROMISED_IN_THE_PAST,
    })
    .input(TakeIn)
    .output(Taken),
};
