import { z } from 'zod';
import { PASSABLE_MATTERS } from '../../work/counter/handover-matters.ts';
import { JOB_STATES, WAITS_ON } from '../../work/counter/job-state.ts';
import {
  APPROVAL_WAYS,
  MACHINE_KINDS,
  PAPER_KINDS,
  REACH_BY,
  SYMPTOMS,
} from '../../work/vocabulary.ts';
import { CalendarDate, Instant, Minor, SignedBy } from '../fields.ts';
import { CustomerId, JobCode, JobId, PaperId, PromiseId } from '../ids.ts';
import { Customer } from './customer.ts';
import { Machine } from './machine.ts';

/** A job in a list, and all that the counter knows of it. */

/** A job as it stands in a list. */
export const JobCard = z.object({
  id: JobId,
  number: z.int(),
  code: JobCode,
  state: z.enum(JOB_STATES),
  waitsOn: z.enum(WAITS_ON),
  customerId: CustomerId,
  customerName: z.string(),
  customerPhone: z.string(),
  /** Kind, make and model in one line. */
  machine: z.string(),
  machineKind: z.enum(MACHINE_KINDS),
  complaint: z.string(),
  takenInOn: CalendarDate,
  promisedFor: CalendarDate.nullable(),
  /** How often another day was promised since intake. */
  promiseMoved: z.int(),
  /** The day promised last is one that the customer was not told of yet. */
  customerToTell: z.boolean(),
  /** Instant of the last move, so that a screen can say how long it has waited. */
  stateSince: Instant,
  /** What the job waits for, in words: parts and their expected date, or the reason it stopped. */
  stateNote: z.string(),
});
export type JobCard = z.infer<typeof JobCard>;

export const PaperCard = z.object({
  id: PaperId,
  kind: z.enum(PAPER_KINDS),
  number: z.string(),
  title: z.string(),
  fileName: z.string(),
  fingerprint: z.string(),
  issuedAt: Instant,
  issuedBy: z.string(),
});
export type PaperCard = z.infer<typeof PaperCard>;

/** Another day that was promised after intake. */
export const MovedPromise = z.object({
  id: PromiseId,
  promisedFor: CalendarDate,
  former: CalendarDate.nullable(),
  reason: z.string(),
  by: z.string(),
  at: Instant,
  /** How the customer was told; null while they were not. */
  told: z.object({ how: z.enum(APPROVAL_WAYS), by: z.string(), at: Instant }).nullable(),
});
export type MovedPromise = z.infer<typeof MovedPromise>;

/** All that the counter knows of a job. */
export const JobDossier = JobCard.extend({
  customer: Customer,
  machineDetails: Machine,
  symptoms: z.array(z.enum(SYMPTOMS)),
  condition: z.string(),
  leftWith: z.array(z.string()),
  fuel: z.string(),
  lastService: z.string(),
  engineHours: z.number().nullable(),
  reachBy: z.enum(REACH_BY),
  diagnosisFee: Minor.nullable(),
  spendingLimit: Minor.nullable(),
  depositAgreed: Minor.nullable(),
  takenInBy: z.string(),
  /** The customer's signature at intake. */
  intakeSigned: SignedBy,
  /** Both signatures on the work order; null until there is one. */
  handoverSigned: z.object({ customer: SignedBy, shop: SignedBy }).nullable(),
  workDone: z.string(),
  /** Why nobody may run the machine as it stands, as it was said; empty of one that may be run. */
  doNotRun: z.string(),
  nextStates: z.array(z.enum(JOB_STATES)),
  moves: z.array(
    z.object({ to: z.enum(JOB_STATES), at: Instant, by: z.string(), note: z.string() }),
  ),
  /** The first at the head. */
  promises: z.array(MovedPromise),
  /** What was mended of the intake's facts since, the first at the head. */
  amendments: z.array(z.object({ reason: z.string(), by: z.string(), at: Instant })),
  /** What was not settled when the machine went out, and why it went out nevertheless. */
  passedOver: z.array(
    z.object({
      matter: z.enum(PASSABLE_MATTERS),
      says: z.string(),
      items: z.array(z.string()),
      reason: z.string(),
      by: z.string(),
      at: Instant,
    }),
  ),
  papers: z.array(PaperCard),
});
export type JobDossier = z.infer<typeof JobDossier>;
