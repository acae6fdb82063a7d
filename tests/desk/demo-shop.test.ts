import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Temporal } from 'temporal-polyfill';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { DEMO_JOBS } from '../../db/demo/jobs/index.ts';
import { issuedPaper } from '../../db/schema/index.ts';
import { openStore, type Store } from '../../db/store.ts';
import { type DeskClient, deskClient } from '../../electron/command/demo-shop/client.ts';
import { fillDemoShop } from '../../electron/command/fill-demo-shop.ts';
import { type DeskContext, undisturbed } from '../../electron/desk/index.ts';
import { drawPaper } from '../../electron/paper/index.ts';
import type { BenchSheet } from '../../shared/contract/bench/index.ts';
import type { JobCard } from '../../shared/contract/counter/index.ts';
import { JOB_STATES } from '../../shared/work/counter/job-state.ts';
import { CORE_FEATURES, measuredFeaturesOf } from '../../shared/work/features.ts';
import { APPROVAL_WAYS, PAYMENT_METHODS, STANDINGS } from '../../shared/work/vocabulary.ts';

/** A Wednesday. */
const TODAY = '2026-11-25';

let folder: string;
let store: Store;
let context: DeskContext;
let desk: DeskClient;
let jobs: JobCard[];
let sheets: Map<string, BenchSheet>;

// One shop for all the tests of this file: a hundred and seventy papers take their time.
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tappet-demo-shop-'));
  store = openStore(folder, { careless: true });
  context = {
    store,
    now: () => new Date(`${TODAY}T16:00:00Z`),
    drawPaper,
    program: { version: '0' },
    alone: undisturbed,
  };
  await fillDemoShop(context);
  desk = deskClient(context);
  jobs = await desk.counter.jobs({ text: '' });
  sheets = new Map();
  for (const { id } of jobs) sheets.set(id, await desk.bench.sheet({ jobId: id }));
}, 300_000);

afterAll(() => {
  store.close();
  rmSync(folder, { recursive: true, force: true });
});

const readingsOf = (sheet: BenchSheet) =>
  sheet.features.flatMap(({ places }) => places.flatMap((place) => place.readings));

test('says that it is the invented shop, and is filled once only', async () => {
  expect(await desk.office.about({})).toMatchObject({ demo: true, firstRun: false });
  const before = await desk.office.verifyJournal({});
  await fillDemoShop(context);
  expect(await desk.office.verifyJournal({})).toEqual(before);
});

test('has people, machines, engine models, gauges and parts', async () => {
  expect(await desk.office.staff({})).toHaveLength(4);
  const customers = await desk.counter.findCustomers({ text: '' });
  expect(customers.length).toBeGreaterThanOrEqual(12);
  for (const { name, phone, phoneInternational } of customers) {
    // 555-01xx is kept for stories: nobody has it.
    expect(phone, name).toMatch(/555-01\d\d$/);
    expect(phoneInternational, name).toMatch(/^\+1\d{10}$/);
  }
  const machines = await desk.counter.findMachines({ text: '' });
  expect(machines).toHaveLength(20);
  expect(new Set(machines.map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(10);
  const parts = await desk.parts.find({ text: '', limit: 1000 });
  expect(parts).toHaveLength(105);
  expect(parts.every(({ price, cost, bin }) => price > cost && bin !== '')).toBe(true);
  expect(parts.some(({ onHand, reorderPoint }) => onHand < reorderPoint)).toBe(true);
  const gauges = await desk.bench.gauges({});
  expect(gauges.length).toBeGreaterThanOrEqual(10);
  expect(gauges.filter(({ expired }) => expired)).toHaveLength(1);
});

test('no engine model lacks a specification of what every rebuild measures', async () => {
  const models = await desk.specbook.models({ text: '' });
  expect(models).toHaveLength(6);
  expect(models.filter(({ variantOf }) => variantOf !== null)).toHaveLength(1);
  expect(models.some(({ contradicted }) => contradicted > 0)).toBe(true);
  const standings = new Set<string>();
  for (const { id, make, cycle, cylinders } of models) {
    const { specifications } = await desk.specbook.model({ id });
    const wanted = [
      ...measuredFeaturesOf({ cycle, cylinders, torqueStages: {} }).filter((feature) =>
        CORE_FEATURES.includes(feature),
      ),
      ...(['bore-taper', 'bore-out-of-round', 'piston-clearance', 'rod-clearance'] as const),
    ];
    expect(
      specifications.map(({ feature }) => feature),
      make,
    ).toEqual(expect.arrayContaining(wanted));
    for (const { source, standing } of specifications) {
      expect(source.title).not.toBe('');
      standings.add(standing);
    }
  }
  expect([...standings].sort()).toEqual([...STANDINGS].sort());
  expect(models.filter(({ cycle }) => cycle === 'two-stroke')).toHaveLength(1);
  expect(models.filter(({ cylinders }) => cylinders === 2)).toHaveLength(2);
  const files = [];
  for (const { id } of await desk.specbook.sources({}))
    files.push(...(await desk.specbook.sourceFiles({ sourceId: id })));
  expect(files).toMatchObject([{ mediaType: 'application/pdf' }]);
});

test.each([
  ['zolkiewska', 'Łucja Żółkiewska'],
  ['odegard', 'Håkon Ødegård'],
  ['ελενη', 'Ελένη Παπαδοπούλου'],
  ['山田', '山田 花子'],
  ['ковальчук', 'Олена Ковальчук'],
])('%s finds %s', async (text, title) => {
  const hits = await desk.counter.search({ text });
  expect(hits.filter(({ kind }) => kind === 'customer').map((hit) => hit.title)).toEqual([title]);
});

describe('forty jobs', () => {
  test('stand in every state, most of them handed over', () => {
    expect(jobs).toHaveLength(40);
    expect(DEMO_JOBS).toHaveLength(40);
    expect(new Set(jobs.map(({ state }) => state))).toEqual(new Set(JOB_STATES));
    expect(jobs.filter(({ state }) => state === 'handed-over').length).toBeGreaterThan(20);
  });

  test('came in over eight months, numbered in their order', () => {
    const dates = jobs.map(({ takenInOn }) => takenInOn).reverse();
    expect(dates).toEqual(dates.toSorted());
    const [first = ''] = dates;
    const months = Temporal.PlainDate.from(first).until(TODAY, { largestUnit: 'months' }).months;
    expect(months).toBeGreaterThanOrEqual(7);
    expect(months).toBeLessThanOrEqual(8);
  });

  test('fill the day: late, promised today, soon, and waiting on everybody', async () => {
    const day = await desk.counter.day({});
    expect(day.date).toBe(TODAY);
    for (const list of [day.late, day.today, day.soon]) expect(list.length).toBeGreaterThan(1);
    for (const { on, jobs: waiting } of day.waiting) expect(waiting.length, on).toBeGreaterThan(0);
    expect(day.figures.handedOverThisWeek).toBeGreaterThan(0);
  });

  test('no machine has two open jobs', async () => {
    const open = jobs.filter(({ state }) => state !== 'handed-over');
    const machines = [];
    for (const { id } of open) machines.push((await desk.counter.job({ id })).machineDetails.id);
    expect(new Set(machines).size).toBe(open.length);
  });

  test('what waits for a part names it and when it is expected', () => {
    const waiting = jobs.filter(({ state }) => state === 'waits-for-parts');
    for (const { stateNote } of waiting)
      expect(stateNote).toMatch(/\(\S+\) from .+, expected [A-Z][a-z]{2} \d{1,2}, \d{4}$/);
    expect(waiting.length).toBeGreaterThan(0);
  });

  test('were approved and paid in all the ways there are', async () => {
    const ways = new Set<string>();
    const methods = new Set<string>();
    for (const { id, state } of jobs) {
      const { approvals, payments, invoice, approvedLimit, due } = await desk.till.account({
        jobId: id,
      });
      for (const { how } of approvals) ways.add(how);
      for (const { method } of payments) methods.add(method);
      if (invoice !== null) expect(invoice.totals.total).toBeLessThanOrEqual(approvedLimit);
      if (state !== 'handed-over' || due === 0) continue;
      const { moves } = await desk.counter.job({ id });
      expect(moves.at(-1)?.note, 'a reason for what is owed').not.toBe('');
    }
    expect([...ways].sort()).toEqual([...APPROVAL_WAYS].sort());
    expect([...methods].sort()).toEqual([...PAYMENT_METHODS].sort());
  });
});

test('gauges were checked, one found bad and put right; the compression of twins is computed', async () => {
  const checks = [];
  for (const { id } of await desk.bench.gauges({}))
    checks.push(...(await desk.bench.gauge({ gaugeId: id })).checks);
  expect(checks.filter(({ good }) => !good)).toHaveLength(1);
  expect(checks.filter(({ good }) => good).length).toBeGreaterThan(1);
  const ratios = [...sheets.values()].flatMap(({ derived }) =>
    derived.filter(({ feature }) => feature === 'compression-ratio'),
  );
  expect(ratios.length).toBeGreaterThan(0);
  for (const { value } of ratios) expect(value).toBeCloseTo(8, 0);
});

describe('at the bench', () => {
  test('what was handed over after a build left with nothing outside its limits', () => {
    const built = jobs.filter(
      ({ id, state }) =>
        state === 'handed-over' && (sheets.get(id)?.holdPoints ?? []).some(({ at }) => at !== null),
    );
    expect(built.length).toBeGreaterThan(20);
    for (const { id, code } of built) {
      const sheet = sheets.get(id);
      if (sheet === undefined) throw new Error(`${code} has no sheet.`);
      const finals = readingsOf(sheet).filter(({ phase }) => phase === 'final');
      expect(finals.length, code).toBeGreaterThan(0);
      for (const { feature, place, verdict } of finals)
        expect(verdict, `${code} ${feature} ${place}`).not.toBe('outside');
      expect(
        sheet.holdPoints.every(({ state, reason }) => state === 'passed' || reason !== ''),
        code,
      ).toBe(true);
    }
  });

  test('some hold points were overridden, each with its reason', () => {
    const points = [...sheets.values()].flatMap(({ holdPoints }) => holdPoints);
    const overridden = points.filter(({ state }) => state === 'overridden');
    expect(overridden.length).toBeGreaterThanOrEqual(2);
    for (const { reason } of overridden) expect(reason.length).toBeGreaterThan(5);
  });

  test('a worn twin came in: cylinder 2 past its wear limit, cylinder 1 not', () => {
    const twins = [...sheets.values()].filter(({ cylinders }) => cylinders === 2);
    const worst = (sheet: BenchSheet, cylinder: number) => {
      const bore = sheet.features.find(({ feature }) => feature === 'bore');
      const values = (bore?.places ?? [])
        .filter((place) => place.cylinder === cylinder)
        .flatMap(({ readings }) => readings)
        .filter(({ phase }) => phase === 'as-received')
        .map(({ valueBase }) => valueBase);
      return { worn: Math.max(...values), limit: bore?.specification?.wearLimitBase ?? Infinity };
    };
    const wornTwins = twins.filter((sheet) => {
      const one = worst(sheet, 1);
      const two = worst(sheet, 2);
      return two.worn > two.limit && one.worn < one.limit;
    });
    expect(wornTwins.length).toBeGreaterThan(0);
  });

  test('one is half built, and a worn twin is still being measured', () => {
    const open = jobs.filter(({ state }) => state === 'on-the-bench');
    for (const { id, code } of open) {
      const sheet = sheets.get(id);
      const states = new Set((sheet?.holdPoints ?? []).map(({ state }) => state));
      expect(states.has('open'), code).toBe(true);
      expect(sheet && readingsOf(sheet).length, code).toBeGreaterThan(0);
    }
    const begun = open.filter(({ id }) => {
      const sheet = sheets.get(id);
      return sheet && readingsOf(sheet).some(({ phase }) => phase === 'final');
    });
    expect(begun.length).toBeGreaterThan(0);
    const [twin] = open.filter(({ id }) => sheets.get(id)?.cylinders === 2);
    const sheet = sheets.get(twin?.id ?? '');
    const placesOf = (feature: string) =>
      sheet?.features.find((each) => each.feature === feature)?.places ?? [];
    expect(placesOf('bore').every(({ readings }) => readings.length === 0)).toBe(true);
    expect(placesOf('piston-skirt').every(({ readings }) => readings.length > 0)).toBe(true);
  });
});

test('journal and papers are whole, in order and not of the future', async () => {
  expect(await desk.office.verifyJournal({})).toMatchObject({ intact: true, firstBroken: null });
  const entries = await desk.office.journal({ limit: 1000 });
  const times = entries.map(({ at }) => at).reverse();
  expect(times).toEqual(times.toSorted());
  expect(times.at(-1)?.localeCompare(context.now().toISOString())).toBeLessThanOrEqual(0);

  const papers = store.read
    .select({ kind: issuedPaper.kind, number: issuedPaper.number })
    .from(issuedPaper)
    .all();
  for (const [kind, letter] of [
    ['invoice', 'I'],
    ['work-order', 'W'],
  ] as const) {
    const numbers = papers.filter((paper) => paper.kind === kind).map(({ number }) => number);
    expect(numbers.sort()).toEqual(
      numbers.map((_, index) => `${letter}-${String(index + 1).padStart(6, '0')}`),
    );
  }
});
