import {
  and,
  asc,
  count,
  desc,
  eq,
  gte,
  inArray,
  like,
  lt,
  notInArray,
  or,
  type SQL,
  sql,
} from 'drizzle-orm';
import type { JobCard, JobDossier } from '../../../shared/contract/counter/index.ts';
import { CustomerId, JobId, jobCode } from '../../../shared/contract/ids.ts';
import {
  isOwed,
  type JobState,
  NO_LONGER_OWED,
  nextStates,
  waitsOn,
} from '../../../shared/work/counter/job-state.ts';
import {
  MACHINE_KIND_LABELS,
  type MachineKind,
  PAPER_KINDS,
} from '../../../shared/work/vocabulary.ts';
import { prepared } from '../../prepared.ts';
import { remembered } from '../../remembered.ts';
import {
  customer,
  handoverMatter,
  intakeAmendment,
  issuedPaper,
  job,
  jobMove,
  machine,
  staff,
} from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { papersOf, staffById } from '../office.ts';
import { matches } from '../search-text.ts';
import { customerById } from './customers.ts';
import { machineById } from './machines.ts';
import { promisesOf, timesMoved, untold } from './promises.ts';
import { handoverSigned, signedBy } from './signatures.ts';

/** States in which the shop has nothing more to do. */
const CLOSED: JobState[] = ['handed-over'];

const columns = {
  job,
  customerName: customer.name,
  customerPhone: customer.phone,
  machineKind: machine.kind,
  make: machine.make,
  model: machine.model,
  promiseMoved: timesMoved,
  untold,
};

const rows = (store: ReadStore) =>
  store
    .select(columns)
    .from(job)
    .innerJoin(customer, eq(customer.id, job.customerId))
    .innerJoin(machine, eq(machine.id, job.machineId));

type Row = ReturnType<ReturnType<typeof rows>['all']>[number];

/** Kind, make and model in one line. */
export const machineInWords = (
  kind: MachineKind,
  { make, model }: { make: string; model: string },
): string => [MACHINE_KIND_LABELS[kind], make, model].filter(Boolean).join(' ');

const asCard = (row: Row): JobCard => ({
  id: JobId.parse(row.job.id),
  number: row.job.number,
  code: jobCode(row.job.number),
  state: row.job.state,
  waitsOn: waitsOn(row.job.state),
  customerId: CustomerId.parse(row.job.customerId),
  customerName: row.customerName,
  customerPhone: row.customerPhone,
  machine: machineInWords(row.machineKind, row),
  machineKind: row.machineKind,
  complaint: row.job.complaint,
  takenInOn: row.job.takenInOn,
  promisedFor: row.job.promisedFor,
  promiseMoved: row.promiseMoved,
  customerToTell: row.untold === 1 && isOwed(row.job.state),
  stateSince: row.job.stateSince,
  stateNote: row.job.stateNote,
});

const cards = (
  store: ReadStore,
  where: SQL | undefined,
  limit: number,
  first: readonly SQL[] = [],
): JobCard[] =>
  rows(store)
    .where(where)
    .orderBy(...first, desc(job.number))
    .limit(limit)
    .all()
    .map(asCard);

/** Late ones at the head, the one that is late longest first: those whose promised day is past and still owed. */
const lateFirst = (today: string): SQL[] => {
  const late = and(lt(job.promisedFor, today), notInArray(job.state, [...NO_LONGER_OWED]));
  return [sql`iif(${late}, ${job.promisedFor}, '9999-99-99')`];
};

/**
 * Jobs that match, the newest first; of some states those that are late come before.
 * @param today in the shop's time zone; asked only where late ones come first
 */
export const findJobs = (
  store: ReadStore,
  { text, states, limit }: { text: string; states: readonly JobState[]; limit: number },
  today = '',
): JobCard[] =>
  cards(
    store,
    and(
      matches(job.searchText, text),
      states.length === 0 ? undefined : inArray(job.state, [...states]),
    ),
    limit,
    // All jobs there ever were are not put in another order than their numbers have.
    states.length === 0 || states.includes('handed-over') ? [] : lateFirst(today),
  );

/** `w-42`, `W 000042`, `e42-1`: letter, number, and of an estimate its revision. */
const PAPER_NUMBER = /^([a-z])[\s-]?(\d{1,9})(?:-(\d{1,4}))?$/i;

/** The jobs of the papers of that number, as somebody reads it off the copy in their hand. */
export function findJobsOfPaper(store: ReadStore, text: string): { paper: string; job: JobCard }[] {
  const [, letter, digits, revision] = PAPER_NUMBER.exec(text.trim()) ?? [];
  if (letter === undefined || digits === undefined) return [];
  const number = `${letter.toUpperCase()}-${digits.padStart(6, '0')}`;
  const wanted =
    revision === undefined
      ? or(eq(issuedPaper.number, number), like(issuedPaper.number, `${number}-%`))
      : eq(issuedPaper.number, `${number}-${revision}`);
  const papers = store
    .select({ jobId: issuedPaper.jobId, title: issuedPaper.title })
    .from(issuedPaper)
    // By kind too: so the index is used, and no row with its PDF is read in vain.
    .where(and(inArray(issuedPaper.kind, [...PAPER_KINDS]), wanted))
    .orderBy(asc(issuedPaper.id))
    .all();
  // Of several revisions the last one is named.
  return [...new Map(papers.map((paper) => [paper.jobId, paper]))].flatMap(([jobId, { title }]) => {
    const row = rows(store).where(eq(job.id, jobId)).get();
    return row === undefined ? [] : [{ paper: title, job: asCard(row) }];
  });
}

export const jobsOfCustomer = (store: ReadStore, customerId: string): JobCard[] =>
  cards(store, eq(job.customerId, customerId), 1000);

export const jobsOfMachine = (store: ReadStore, machineId: string): JobCard[] =>
  cards(store, eq(job.machineId, machineId), 1000);

/** Every job that is still in the shop, the one promised first at the head. */
export const openJobs = (store: ReadStore): JobCard[] =>
  rows(store)
    .where(notInArray(job.state, CLOSED))
    .orderBy(asc(job.promisedFor), asc(job.number))
    .all()
    .map(asCard);

export const takenInSince = (store: ReadStore, date: string): number =>
  store.select({ n: count() }).from(job).where(gte(job.takenInOn, date)).get()?.n ?? 0;

/** Jobs that reached a state since an instant. */
export const movedSince = (store: ReadStore, to: JobState, instant: string): number =>
  store
    .select({ n: count() })
    .from(jobMove)
    .where(and(eq(jobMove.to, to), gte(jobMove.at, instant)))
    .get()?.n ?? 0;

/** Where billed parts may not have left the shelf. The condition is that of the index, to the letter. */
export const jobsWithPartsToIssue = (store: ReadStore): JobCard[] =>
  cards(store, sql`${job.partsToIssue} = 1`, -1);

const jobRow = prepared((store) =>
  store
    .select()
    .from(job)
    .where(eq(job.id, sql.placeholder('id')))
    .prepare(),
);

export const jobRowById = (store: ReadStore, id: string) => jobRow(store).get({ id });

export const jobIdByNumber = (store: ReadStore, number: number): string | undefined =>
  store.select({ id: job.id }).from(job).where(eq(job.number, number)).get()?.id;

const movesOfJob = prepared((store) =>
  store
    .select({ to: jobMove.to, at: jobMove.at, by: staff.name, note: jobMove.note })
    .from(jobMove)
    .innerJoin(staff, eq(staff.id, jobMove.by))
    .where(eq(jobMove.jobId, sql.placeholder('jobId')))
    .orderBy(asc(jobMove.id))
    .prepare(),
);

export const movesOf = (store: ReadStore, jobId: string): JobDossier['moves'] =>
  movesOfJob(store).all({ jobId });

const amendmentsOf = prepared((store) =>
  store
    .select({ reason: intakeAmendment.reason, by: staff.name, at: intakeAmendment.at })
    .from(intakeAmendment)
    .innerJoin(staff, eq(staff.id, intakeAmendment.by))
    .where(eq(intakeAmendment.jobId, sql.placeholder('jobId')))
    .orderBy(asc(intakeAmendment.id))
    .prepare(),
);

const passedOverOf = prepared((store) =>
  store
    .select({
      matter: handoverMatter.matter,
      says: handoverMatter.says,
      items: handoverMatter.items,
      reason: handoverMatter.reason,
      by: staff.name,
      at: handoverMatter.at,
    })
    .from(handoverMatter)
    .innerJoin(staff, eq(staff.id, handoverMatter.by))
    .where(eq(handoverMatter.jobId, sql.placeholder('jobId')))
    .orderBy(asc(handoverMatter.id))
    .prepare(),
);

const rowById = prepared((store) =>
  rows(store)
    .where(eq(job.id, sql.placeholder('id')))
    .prepare(),
);

/** All that the counter knows of a job. */
export const dossierOf = remembered((store, jobId): JobDossier | undefined => {
  const row = rowById(store).get({ id: jobId });
  if (row === undefined) return undefined;
  const owner = customerById(store, row.job.customerId);
  const machineDetails = machineById(store, row.job.machineId);
  if (owner === undefined || machineDetails === undefined) return undefined;
  const takenInBy = staffById(store, row.job.takenInBy);
  const takenInByName = takenInBy?.name ?? '';
  return {
    ...asCard(row),
    customer: owner,
    machineDetails,
    symptoms: row.job.symptoms,
    condition: row.job.condition,
    leftWith: row.job.leftWith,
    fuel: row.job.fuel,
    lastService: row.job.lastService,
    engineHours: row.job.engineHours,
    reachBy: row.job.reachBy,
    diagnosisFee: row.job.diagnosisFee,
    spendingLimit: row.job.spendingLimit,
    depositAgreed: row.job.depositAgreed,
    takenInBy: takenInByName,
    intakeSigned: signedBy(row.job.intakeSignature, takenInByName),
    handoverSigned: handoverSigned(store, jobId),
    workDone: row.job.workDone,
    doNotRun: row.job.doNotRun,
    nextStates: [...nextStates(row.job.state)],
    moves: movesOf(store, jobId),
    promises: promisesOf(store, jobId),
    amendments: amendmentsOf(store).all({ jobId }),
    passedOver: passedOverOf(store).all({ jobId }),
    papers: papersOf(store, jobId),
  };
});
