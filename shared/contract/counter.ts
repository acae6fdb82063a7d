import { z } from 'zod';
import { JOB_STATES, WAITS_ON } from '../work/counter/job-state.ts';
import {
  APPROVAL_WAYS,
  MACHINE_KINDS,
  PAPER_KINDS,
  REACH_BY,
  SYMPTOMS,
} from '../work/vocabulary.ts';
import { reads, writes } from './base.ts';
import { CalendarDate, Instant, Minor, maybeText, SignatureInput, text } from './fields.ts';
import {
  CustomerId,
  EngineId,
  EngineModelId,
  JobCode,
  JobId,
  MachineId,
  PaperId,
  PromiseId,
  StaffId,
} from './ids.ts';

/** The counter: customers, machines, intake, the day, search, handover. */

/** E-mail may be left empty; what is there must be an address. */
const MaybeEmail = maybeText(200).pipe(
  z.union([z.literal(''), z.email('That is not an e-mail address; leave it empty or mend it.')]),
);

const customerFields = {
  name: text(120),
  /** As the customer says it; kept as typed. */
  phone: maybeText(40),
  email: MaybeEmail,
  address: maybeText(400),
  reachBy: z.enum(REACH_BY).default('telephone'),
  note: maybeText(2000),
};

export const machineFields = {
  kind: z.enum(MACHINE_KINDS),
  make: maybeText(80),
  model: maybeText(80),
  serial: maybeText(80),
};

/** As on the engine's plate. */
export const enginePlate = {
  make: maybeText(80),
  model: maybeText(80),
  typeCode: maybeText(80),
  serial: maybeText(80),
  dateCode: maybeText(40),
};

const engineFields = {
  ...enginePlate,
  /** The engine's entry in the spec book, when it is known at the counter. */
  engineModelId: EngineModelId.nullable().default(null),
};

export const Customer = z.object({
  id: CustomerId,
  number: z.int(),
  name: z.string(),
  phone: z.string(),
  /** The telephone number in international form, when it could be read as one; else empty. */
  phoneInternational: z.string(),
  email: z.string(),
  address: z.string(),
  reachBy: z.enum(REACH_BY),
  note: z.string(),
  since: Instant,
});
export type Customer = z.infer<typeof Customer>;

const EngineHours = z
  .number('Give the running hours as a number, or leave them empty.')
  .min(0, 'Running hours are zero or more.')
  .max(100_000, 'No small engine runs that long; give its hours.');

const Engine = z.object({
  id: EngineId,
  make: z.string(),
  model: z.string(),
  typeCode: z.string(),
  serial: z.string(),
  dateCode: z.string(),
  engineModelId: EngineModelId.nullable(),
  /** Make and model of the spec book's entry; empty when none is chosen. */
  engineModelName: z.string(),
});

export const Machine = z.object({
  id: MachineId,
  customerId: CustomerId,
  customerName: z.string(),
  kind: z.enum(MACHINE_KINDS),
  make: z.string(),
  model: z.string(),
  serial: z.string(),
  engine: Engine,
  /** The newest job on which it is in the shop now. */
  openJob: JobCode.nullable(),
});
export type Machine = z.infer<typeof Machine>;

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
  workDone: z.string(),
  nextStates: z.array(z.enum(JOB_STATES)),
  moves: z.array(
    z.object({ to: z.enum(JOB_STATES), at: Instant, by: z.string(), note: z.string() }),
  ),
  /** The first at the head. */
  promises: z.array(MovedPromise),
  /** What was mended of the intake's facts since, the first at the head. */
  amendments: z.array(z.object({ reason: z.string(), by: z.string(), at: Instant })),
  papers: z.array(PaperCard),
});
export type JobDossier = z.infer<typeof JobDossier>;

export const SearchHit = z.object({
  kind: z.enum(['job', 'customer', 'machine', 'part', 'engine-model']),
  /** Id of the thing itself; for a machine hit, the machine's. */
  id: z.uuid(),
  title: z.string(),
  detail: z.string(),
  /** The job's code for a job, the customer's id for a machine; else empty. */
  reference: z.string(),
});
export type SearchHit = z.infer<typeof SearchHit>;

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

export const SERIAL_TAKEN = {
  status: 409,
  message:
    'A machine of this make has this serial number already. Find it by the number and use it, or mend the number.',
  data: z.object({ machineId: MachineId, customerName: z.string() }),
} as const;

export const PROMISED_IN_THE_PAST = {
  status: 409,
  message: 'The promised date is past. Choose today or a later day.',
} as const;

const HOLD_POINT_OPEN = {
  status: 409,
  message:
    'Hold points of the build are still open. Pass them at the bench, or override them there with a reason in writing.',
  data: z.object({ open: z.array(z.string()) }),
} as const;

export const counter = {
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

  jobs: reads
    .input(
      z.strictObject({
        text: maybeText(200),
        states: z.array(z.enum(JOB_STATES)).default([]),
        limit: z.int().min(1).max(1000).default(200),
      }),
    )
    .output(z.array(JobCard)),

  /** One job, by its id or by the code that the tag's barcode says. */
  job: reads
    .input(z.union([z.strictObject({ id: JobId }), z.strictObject({ code: JobCode })]))
    .output(JobDossier),

  moveJob: writes
    .errors({
      MOVE_REFUSED: {
        status: 409,
        message: 'The job can’t go there from where it stands. Choose one of the moves offered.',
        data: z.object({ from: z.enum(JOB_STATES), to: z.enum(JOB_STATES) }),
      },
      HOLD_POINT_OPEN,
      REASON_WANTED: {
        status: 409,
        message: 'Say why in a few words: this move needs a reason.',
      },
    })
    .input(
      z.strictObject({ by: StaffId, jobId: JobId, to: z.enum(JOB_STATES), note: maybeText(500) }),
    )
    .output(JobDossier),

  /** The start page: what is promised, and what waits on whom. */
  day: reads.input(z.strictObject({ date: CalendarDate.nullable().default(null) })).output(
    z.object({
      date: CalendarDate,
      late: z.array(JobCard),
      today: z.array(JobCard),
      soon: z.array(JobCard),
      /** Another day was promised, and the customer does not know yet. */
      toTell: z.array(JobCard),
      /** Their slowest missing part is expected after the day promised. */
      partsTooLate: z.array(z.object({ job: JobCard, expectedOn: CalendarDate })),
      waiting: z.array(z.object({ on: z.enum(WAITS_ON), jobs: z.array(JobCard) })),
      figures: z.object({
        open: z.int(),
        ready: z.int(),
        takenInThisWeek: z.int(),
        handedOverThisWeek: z.int(),
      }),
    }),
  ),

  /** Jobs, customers, machines, parts and engine models, from anywhere. */
  search: reads.input(z.strictObject({ text: text(200) })).output(z.array(SearchHit)),

  handOver: writes
    .errors({
      MOVE_REFUSED: {
        status: 409,
        message:
          'Only a job that is ready, or stopped, can be handed over. Finish it at the bench first.',
        data: z.object({ from: z.enum(JOB_STATES), to: z.enum(JOB_STATES) }),
      },
      HOLD_POINT_OPEN,
      NOT_INVOICED: {
        status: 409,
        message: 'There is no invoice yet. Issue it at the till, then hand over.',
      },
      PAYMENT_DUE: {
        status: 409,
        message:
          'The invoice is not paid. Take the payment, or say why the machine goes out owing.',
        data: z.object({ due: z.int() }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        /** What was done, in a few sentences, as it stands on the work order. */
        workDone: text(4000),
        oldParts: maybeText(300),
        nextServiceOn: CalendarDate.nullable().default(null),
        /** Why the machine goes out with money owing; empty when nothing is. */
        owingReason: maybeText(500),
        customerSignature: SignatureInput,
        shopSignature: SignatureInput,
      }),
    )
    .output(z.object({ job: JobDossier, workOrder: PaperCard })),
};
