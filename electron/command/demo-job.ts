import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { safe } from '@orpc/client';
import { DEMO_CUSTOMERS } from '../../db/demo/customers.ts';
import { enginePlate } from '../../db/demo/engines/index.ts';
import {
  leaked,
  newPart,
  pressed,
  type StoryFinding,
  sound,
  wants,
  work,
} from '../../db/demo/jobs/findings.ts';
import { labour, outside, part, type StoryLine, supplies } from '../../db/demo/jobs/story.ts';
import { DEMO_MACHINES } from '../../db/demo/machines.ts';
import { DEMO_PARTS } from '../../db/demo/parts.ts';
import { scribble } from '../../db/demo/scribble.ts';
import { DEMO_SHOP } from '../../db/demo/shop.ts';
import { DEMO_STAFF } from '../../db/demo/staff.ts';
import type { PaperCard } from '../../shared/contract/counter/index.ts';
import type { DeskContext } from '../desk/index.ts';
import { type BenchJob, build, buildReadings, measureAsReceived } from './demo-shop/bench-work.ts';
import { deskClient } from './demo-shop/client.ts';
import { noteFindings } from './demo-shop/diagnosis-work.ts';
import { idOf, markAsDemo, type OpenShop, openDemoShop } from './demo-shop/set-up.ts';
import { StoryClock } from './demo-shop/story-clock.ts';
import { billLines, issueParts } from './demo-shop/till-work.ts';

const ENGINE = 'oh172';
const CUSTOMER = DEMO_CUSTOMERS.lucja;
const MECHANIC = 'ignacio';

/** Days before today on which the machine came in. */
const TAKEN_IN = -12;

const LINES: readonly StoryLine[] = [
  labour('Strip and measure', 1.5),
  labour('Build, set and run in', 3),
  outside('New sleeve pressed in and bored to standard', 13_200),
  part('OS-172-010'),
  part('OS-172-020'),
  part('OS-172-030'),
  part('GN-1001'),
  part('GN-1010'),
  supplies(1200),
];

const FINDINGS: readonly StoryFinding[] = [
  sound('turning', 'Free all the way round; no end play to feel'),
  sound('spark', 'Jumps the tester; plug oily, gap 0.7 mm'),
  wants('fuel', 'Six weeks old: drained outdoors', work('Carburettor bowl cleaned')),
  wants('air', 'Filter full of soil, and soil behind it', newPart('Air filter')),
  wants('oil', 'Black, low, grit between the fingers'),
  pressed('wants-work', 'With a little oil in it 62 psi', '39'),
  {
    ...leaked('wants-work', 'Heard at the breather; valves tight', ['44', 'crankcase']),
    work: [work('Strip and measure')],
  },
];

/** The files that the main job leaves, by the kind of paper. */
const FILES = {
  'claim-ticket': 'claim-ticket.pdf',
  tag: 'tag.pdf',
  estimate: 'estimate.pdf',
  invoice: 'invoice.pdf',
  'work-order': 'work-order.pdf',
  'clearance-sheet': 'clearance-sheet.pdf',
  'credit-note': 'credit-note.pdf',
  receipt: 'receipt.pdf',
  statement: 'statement.pdf',
  'purchase-order': 'purchase-order.pdf',
} as const satisfies Record<PaperCard['kind'], string>;

/**
 * Runs the main job of the demo shop on a fresh store, through the contract as the screens do it: a tiller
 * from intake to the signed work order. Its papers are left in `outDir`, which is made when missing.
 */
export async function runDemoJob(context: DeskContext, outDir: string): Promise<void> {
  const clock = new StoryClock(context.now(), DEMO_SHOP.timeZone, 20 - TAKEN_IN);
  const desk = deskClient({ ...context, now: clock.now });
  const shop = await openDemoShop(desk, clock, {
    engines: [ENGINE],
    parts: DEMO_PARTS.filter(({ number }) => /^(OS|GN)-/.test(number)),
  });
  markAsDemo(context);

  const jobId = await takeIn(shop);
  await diagnose(shop, jobId);
  const slip = await rebuild(shop, jobId);
  await bill(shop, jobId);
  const workOrder = await handOver(shop, jobId);

  mkdirSync(outDir, { recursive: true });
  const kinds = Object.keys(FILES);
  const papers = (await desk.office.papers({ jobId })).toSorted(
    (a, b) => kinds.indexOf(a.kind) - kinds.indexOf(b.kind),
  );
  const files = fileNames(papers);
  for (const [index, { id }] of papers.entries()) {
    const { pdf } = await desk.office.paper({ id });
    writeFileSync(join(outDir, files[index] ?? id), Buffer.from(pdf, 'base64'));
  }
  const { code } = await desk.counter.job({ id: jobId });
  const { entries, intact } = await desk.office.verifyJournal({});
  process.stdout.write(
    `${[
      `Job ${code}: ${CUSTOMER.name}, ${DEMO_MACHINES['lucja-tiller'].make} ${DEMO_MACHINES['lucja-tiller'].model}.`,
      slip,
      ...papers.map(({ title }, index) => `  ${(files[index] ?? '').padEnd(18)}${title}`),
      `Written to ${outDir}`,
      `Fingerprint of the work order (SHA-256 of what was signed): ${workOrder.fingerprint}`,
      `Journal: ${entries} entries, ${intact ? 'chain intact' : 'CHAIN BROKEN'}.`,
    ].join('\n')}\n`,
  );
}

/** The second paper of a kind is called `receipt-2.pdf`. */
function fileNames(papers: readonly Pick<PaperCard, 'kind'>[]): string[] {
  return papers.map(({ kind }, index) => {
    const before = papers.slice(0, index).filter((paper) => paper.kind === kind).length;
    return before === 0 ? FILES[kind] : FILES[kind].replace('.pdf', `-${before + 1}.pdf`);
  });
}

/** At the counter: the customer with her tiller, her deposit and her signature. */
async function takeIn({ desk, clock, staff, engines }: OpenShop): Promise<string> {
  const by = idOf(staff, 'odile');
  const { customer: _owner, engine, ...machine } = DEMO_MACHINES['lucja-tiller'];
  const { model: _model, ...plate } = engine;
  clock.goTo(clock.instant(TAKEN_IN, '14:10'));
  const { jobId } = await desk.counter.takeIn({
    by,
    customer: { which: 'new', ...CUSTOMER },
    machine: {
      which: 'new',
      ...machine,
      engine: { ...enginePlate(ENGINE), ...plate, engineModelId: null },
    },
    complaint: 'Smokes and has no strength. It jumps in the clay and then it stops.',
    symptoms: ['smokes', 'low-power', 'burns-oil'],
    condition: 'Left handle taped, one tine bent, air filter full of soil.',
    leftWith: ['depth stake', 'spark plug spanner'],
    fuel: 'Half a tank, six weeks old',
    lastService: 'Two years ago, at home',
    reachBy: CUSTOMER.reachBy,
    diagnosisFee: 4500,
    spendingLimit: 12_000,
    deposit: 10_000,
    promisedFor: clock.date(0),
    signature: scribble(CUSTOMER.name),
  });
  await desk.till.takePayment({ by, jobId, kind: 'deposit', method: 'card', amount: 10_000 });
  // The bench looks the engine up in the spec book.
  clock.goTo(clock.instant(TAKEN_IN + 1, '08:40'));
  await desk.bench.chooseEngineModel({
    by: idOf(staff, MECHANIC),
    jobId,
    engineModelId: idOf(engines, ENGINE),
  });
  return jobId;
}

/** What was found becomes an estimate, and the customer says yes by text message. */
async function diagnose(shop: OpenShop, jobId: string): Promise<void> {
  const { desk, clock, staff } = shop;
  await desk.counter.moveJob({
    by: idOf(staff, MECHANIC),
    jobId,
    to: 'diagnosis',
    note: 'Leak-down 44 %, out of the breather. Soil went through the filter.',
  });
  await noteFindings(shop, { jobId, by: idOf(staff, MECHANIC) }, FINDINGS);
  clock.goTo(clock.instant(TAKEN_IN + 1, '11:30'));
  const { estimates } = await desk.till.writeEstimate({
    by: idOf(staff, 'ruth'),
    jobId,
    lines: billLines(shop, LINES),
    note: 'The sleeve is only billed if the bore is past its limit.',
    validUntil: clock.date(TAKEN_IN + 31),
  });
  const latest = estimates.at(-1);
  if (latest === undefined) throw new Error('The estimate that was just written is not there.');
  clock.goTo(clock.instant(TAKEN_IN + 2, '15:45'));
  await desk.till.approve({
    by: idOf(staff, 'odile'),
    jobId,
    estimateId: latest.id,
    how: 'text',
    approvedBy: CUSTOMER.name,
    amount: latest.totals.total,
  });
}

/** At the bench: measured as received, built, measured again, every hold point passed. */
async function rebuild(shop: OpenShop, jobId: string): Promise<string> {
  const { desk, clock, staff, gauges } = shop;
  const by = idOf(staff, MECHANIC);
  const job: BenchJob = {
    jobId,
    engine: ENGINE,
    by,
    machine: 'tiller',
    scope: 'rebuild',
    seed: 'the main job',
  };
  clock.goTo(clock.instant(TAKEN_IN + 4, '08:20'), 75);
  await desk.counter.moveJob({ by, jobId, to: 'on-the-bench' });
  await measureAsReceived(shop, job, { wear: 1.1 });
  await issueParts(shop, by, jobId, LINES);

  clock.goTo(clock.instant(TAKEN_IN + 9, '13:15'), 75);
  const slip = await questionedGap(shop, job, idOf(gauges, 'feeler-mm'));
  await build(shop, job, {
    readings: buildReadings(job).map((reading) =>
      reading.feature === 'coil-air-gap' ? { ...reading, text: '0.3' } : reading,
    ),
  });
  await desk.counter.moveJob({ by, jobId, to: 'ready' });
  return slip;
}

/** A slip of ten at the coil: the desk asks, nothing is written, and the gap is read again. */
async function questionedGap({ desk }: OpenShop, { jobId, by }: BenchJob, gaugeId: string) {
  const reading = {
    by,
    jobId,
    feature: 'coil-air-gap',
    place: 'c1-leg-1',
    phase: 'final',
    unit: 'mm',
    gaugeId,
  } as const;
  const { error, isDefined } = await safe(desk.bench.record({ ...reading, text: '0.03' }));
  if (!isDefined || error.code !== 'READING_QUESTIONED')
    throw new Error('A coil air gap of 0.03 mm should have been questioned.');
  const { likely, unit } = error.data;
  return `Coil air gap, leg 1: 0.03 mm was questioned (${likely} ${unit}?), not written; 0.3 mm recorded.`;
}

async function bill({ desk, clock, staff }: OpenShop, jobId: string): Promise<void> {
  const by = idOf(staff, 'odile');
  clock.goTo(clock.instant(TAKEN_IN + 10, '10:10'));
  const { due } = await desk.till.issueInvoice({
    by,
    jobId,
    note: 'Machine stands by the door; fuel drained.',
  });
  clock.goTo(clock.instant(TAKEN_IN + 11, '16:30'));
  await desk.till.takePayment({ by, jobId, kind: 'payment', method: 'card', amount: due });
}

async function handOver(
  { desk, clock, staff }: OpenShop,
  jobId: string,
): Promise<{ fingerprint: string }> {
  const { workOrder } = await desk.counter.handOver({
    by: idOf(staff, 'odile'),
    jobId,
    workDone:
      'New sleeve bored to standard, new piston, rings and gaskets. Valves lapped, lash set cold, coil gap ' +
      'set at both legs. Run in for half an hour; no leaks, governor steady, stop switch tried.',
    oldParts: 'Old piston and rings given back in a bag',
    nextServiceOn: clock.date(TAKEN_IN + 60),
    customerSignature: scribble(CUSTOMER.name),
    shopSignature: scribble(DEMO_STAFF[MECHANIC].name),
  });
  return workOrder;
}
