import { DEMO_CUSTOMERS } from '../../../db/demo/customers.ts';
import { enginePlate } from '../../../db/demo/engines/index.ts';
import { checksOf, type JobStory, type StoryEstimate } from '../../../db/demo/jobs/index.ts';
import { DEMO_MACHINES } from '../../../db/demo/machines.ts';
import { demoPart } from '../../../db/demo/parts.ts';
import { scribble, typedName } from '../../../db/demo/scribble.ts';
import { DEMO_SHOP } from '../../../db/demo/shop.ts';
import { DEMO_STAFF } from '../../../db/demo/staff.ts';
import { type BenchJob, build, measureAsReceived } from './bench-work.ts';
import { orderForJob } from './buying.ts';
import { BUILT_AT, clockOff, clockOn, workBegins } from './clocked.ts';
import { noteFindings } from './diagnosis-work.ts';
import { runEngine } from './run-work.ts';
import { idOf, type OpenShop } from './set-up.ts';
import { billLines, issueParts } from './till-work.ts';

const dates = new Intl.DateTimeFormat(DEMO_SHOP.locale, { dateStyle: 'medium', timeZone: 'UTC' });

/** Something that happens in the shop at its time. */
export interface Happening {
  at: Date;
  /** Seconds that each act of it takes. */
  pace: number;
  happens: () => Promise<void>;
}

/** Who and what came in before: people and machines are found again and not added twice. */
export interface Known {
  customers: Map<string, string>;
  machines: Map<string, string>;
}

/** A story as the happenings it is made of; together with those of other jobs they are run by their time. */
export function tellJob(shop: OpenShop, known: Known, story: JobStory): Happening[] {
  const { desk, clock, staff } = shop;
  const machine = DEMO_MACHINES[story.machine];
  const customer = DEMO_CUSTOMERS[machine.customer];
  const counter = idOf(staff, 'odile');
  const sign = story.signs === 'pad' ? scribble : typedName;
  let jobId = '';

  const planned: (Happening & { order: string })[] = [];
  const on = (day: number, time: string, happens: () => Promise<void>, pace = 30) =>
    planned.push({
      at: clock.instant(day - story.takenIn, time),
      order: `${String(day).padStart(3, '0')} ${time}`,
      pace,
      happens,
    });

  on(0, story.at, async () => {
    jobId = await takeIn(shop, known, story);
    if (story.deposit !== undefined)
      await desk.till.takePayment({ by: counter, jobId, kind: 'deposit', ...story.deposit });
  });

  const { diagnosis, waits, bench, stopped, handover } = story;
  if (diagnosis !== undefined) {
    const { day, found } = diagnosis;
    const by = idOf(staff, diagnosis.by);
    on(day, day === 0 ? '17:35' : '10:20', async () => {
      await desk.counter.moveJob({ by, jobId, to: 'diagnosis', note: found });
      await noteFindings(shop, { jobId, by }, checksOf(diagnosis));
    });
  }

  const lines = (story.secondEstimate ?? story.estimate)?.lines ?? [];
  for (const estimate of [story.estimate, story.secondEstimate])
    if (estimate !== undefined) tellEstimate(estimate);

  function tellEstimate(estimate: StoryEstimate) {
    const { day, lines: these, label = '', besides = [], note = '', approval } = estimate;
    on(day, day === 0 ? '17:40' : '11:30', async () => {
      await desk.till.writeEstimate({
        by: idOf(staff, 'ruth'),
        jobId,
        ...(besides.length === 0
          ? { lines: billLines(shop, these) }
          : {
              options: [{ label, lines: these }, ...besides].map((option) => ({
                label: option.label,
                lines: billLines(shop, option.lines),
              })),
            }),
        note,
        validUntil: clock.date(day - story.takenIn + 30),
      });
    });
    if (approval === undefined) return;
    on(approval.day, approval.day === 0 ? '17:50' : '15:45', async () => {
      const { estimates } = await desk.till.account({ jobId });
      const latest = estimates.at(-1);
      if (latest === undefined) throw new Error('An estimate comes before its approval.');
      const { how, by = customer.name, declines = [] } = approval;
      const taken = billLines(
        shop,
        these.filter((_, place) => !declines.includes(place)),
      );
      const { totals } = await desk.till.price({ jobId, lines: taken });
      const { upTo = totals.total } = approval;
      await desk.till.approve({
        by: counter,
        jobId,
        estimateId: latest.id,
        how,
        approvedBy: by,
        option: latest.options[0]?.key ?? null,
        declined: [...declines],
        amount: upTo,
        signature: how === 'in-person' ? sign(by) : null,
      });
    });
  }

  if (waits !== undefined) {
    const { description, supplier } = demoPart(waits.for);
    const expectedOn = clock.date(waits.expectedDay - story.takenIn);
    let receiveIt: ((by: string) => Promise<void>) | undefined;
    on(waits.day, '16:30', async () => {
      receiveIt = await orderForJob(shop, { number: waits.for, jobId, expectedOn });
      const expected = dates.format(new Date(expectedOn));
      const note = `${description} (${waits.for}) from ${supplier}, expected ${expected}`;
      await desk.counter.moveJob({ by: idOf(staff, 'ruth'), jobId, to: 'waits-for-parts', note });
    });
    if (waits.arrivesDay !== undefined)
      on(waits.arrivesDay, '11:05', async () => receiveIt?.(counter));
  }

  if (bench !== undefined) {
    const job = (): BenchJob => ({
      jobId,
      engine: machine.engine.model,
      by: idOf(staff, bench.by),
      machine: machine.kind,
      scope: bench.scope,
      touched: bench.touched ?? [],
      seed: `${story.machine} ${story.takenIn}`,
    });
    on(bench.day, '13:00', () => toBench(job()));
    const readyDay = bench.readyDay ?? bench.day + 1;
    const begins = workBegins(lines, job().seed);
    if (begins !== null) on(readyDay, begins, () => clockOn(shop, job()));
    on(bench.day, '13:10', () => measureAsReceived(shop, job(), bench), 75);
    on(
      readyDay,
      BUILT_AT,
      async () => {
        await clockOff(shop, job(), clock.instant(readyDay - story.takenIn, BUILT_AT));
        await toBench(job());
        await issueParts(shop, job().by, jobId, lines);
        await build(shop, job(), bench);
        if (bench.soFar !== undefined) return;
        const { by } = job();
        await desk.counter.moveJob({ by, jobId, to: 'ready' });
        if (bench.backAgain !== undefined) {
          await desk.counter.moveJob({ by, jobId, to: 'on-the-bench', note: bench.backAgain });
          await desk.bench.reopenHoldPoint({
            by,
            jobId,
            key: 'test-run',
            reason: bench.backAgain,
          });
          await runEngine(shop, job());
          await desk.bench.passHoldPoint({ by, jobId, key: 'test-run' });
          await desk.counter.moveJob({ by, jobId, to: 'ready' });
        }
        await desk.till.issueInvoice({ by: counter, jobId });
      },
      75,
    );
  }

  async function toBench({ by }: BenchJob) {
    const { state } = await desk.counter.job({ id: jobId });
    if (state !== 'on-the-bench') await desk.counter.moveJob({ by, jobId, to: 'on-the-bench' });
  }

  if (stopped !== undefined)
    on(stopped.day, '14:20', async () => {
      await desk.counter.moveJob({
        by: idOf(staff, 'ruth'),
        jobId,
        to: 'stopped',
        note: stopped.why,
      });
    });

  if (handover !== undefined)
    on(
      handover.day,
      '16:10',
      async () => {
        const { due } = await desk.till.account({ jobId });
        const { paid = [], workDone, oldParts = '', nextServiceIn, owing = '' } = handover;
        const share = paid.length === 0 ? 0 : Math.ceil(due / paid.length / 100) * 100;
        for (const [index, method] of paid.entries()) {
          const last = index === paid.length - 1;
          const amount = last ? due - share * index : share;
          if (amount > 0)
            await desk.till.takePayment({ by: counter, jobId, kind: 'payment', method, amount });
        }
        await desk.counter.handOver({
          by: counter,
          jobId,
          workDone,
          oldParts,
          owingReason: owing,
          nextServiceOn:
            nextServiceIn === undefined
              ? null
              : clock.date(handover.day - story.takenIn + nextServiceIn),
          customerSignature: sign(customer.name),
          shopSignature: scribble(DEMO_STAFF[bench?.by ?? 'odile'].name),
        });
      },
      90,
    );

  const credited = handover?.credited;
  if (credited !== undefined)
    on(credited.day, '11:20', async () => {
      const { invoice } = await desk.till.account({ jobId });
      if (invoice === null) throw new Error('An invoice comes before its credit note.');
      const { unapplied } = await desk.till.creditInvoice({
        by: idOf(staff, 'ruth'),
        invoiceId: invoice.id,
        lines: [{ line: 0, amount: credited.amount }],
        reason: credited.reason,
      });
      const [method = 'cash'] = handover?.paid ?? [];
      await desk.till.takePayment({
        by: counter,
        jobId,
        kind: 'refund',
        method,
        amount: unapplied,
      });
    });
  return inOrder(planned);
}

/** In the order in which it is told; what falls on the same minute happens one after the other. */
function inOrder(planned: (Happening & { order: string })[]): Happening[] {
  let earliest = 0;
  return planned
    .sort((a, b) => (a.order < b.order ? -1 : 1))
    .map(({ at, pace, happens }) => {
      earliest = Math.max(earliest + 600_000, at.getTime());
      return { at: new Date(earliest), pace, happens };
    });
}

async function takeIn(shop: OpenShop, known: Known, story: JobStory): Promise<string> {
  const { desk, clock, staff, engines } = shop;
  const { customer: owner, engine, ...machine } = DEMO_MACHINES[story.machine];
  const customer = DEMO_CUSTOMERS[owner];
  const { model, ...plate } = engine;
  const customerId = known.customers.get(owner);
  const machineId = known.machines.get(story.machine);
  const { make, model: modelName } = enginePlate(model);
  const taken = await desk.counter.takeIn({
    by: idOf(staff, 'odile'),
    customer:
      customerId === undefined ? { which: 'new', ...customer } : { which: 'known', id: customerId },
    machine:
      machineId === undefined
        ? {
            which: 'new',
            ...machine,
            engine: { make, model: modelName, ...plate, engineModelId: idOf(engines, model) },
          }
        : { which: 'known', id: machineId },
    complaint: story.complaint,
    symptoms: [...story.symptoms],
    condition: story.condition,
    leftWith: [...(story.leftWith ?? [])],
    fuel: story.fuel,
    lastService: story.lastService ?? '',
    engineHours: story.engineHours ?? null,
    reachBy: 'reachBy' in customer ? customer.reachBy : 'telephone',
    diagnosisFee: story.diagnosisFee ?? null,
    spendingLimit: story.spendingLimit ?? null,
    deposit: story.deposit?.amount ?? null,
    promisedFor: story.promisedIn === null ? null : clock.date(story.promisedIn - story.takenIn),
    signature: (story.signs === 'pad' ? scribble : typedName)(customer.name),
  });
  known.customers.set(owner, taken.customerId);
  known.machines.set(story.machine, taken.machineId);
  return taken.jobId;
}
