import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { drawPaper } from '../../electron/paper/index.ts';
import type { JobId } from '../../shared/contract/ids.ts';
import { readPaper } from '../unit/paper/reading-back.ts';
import { openTestShop, plainIntake, type TestShop, typed } from './shop.ts';

/** An invented worn twin: cylinder 2 is past its wear limit, cylinder 1 is within it. */
const PIXEL =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

let shop: TestShop;
let jobId: JobId;

beforeAll(async () => {
  shop = await openTestShop({ drawPaper });
  const { desk, by } = shop;
  const model = await desk.specbook.addModel({
    by,
    make: 'Halvard',
    model: 'T-740',
    cycle: 'four-stroke',
    cylinders: 2,
    bore: 82,
    stroke: 70,
  });
  const manual = await desk.specbook.addSource({
    by,
    kind: 'makers-manual',
    title: 'T series manual',
  });
  const given = {
    by,
    engineModelId: model.id,
    sourceId: manual.id,
    page: '30',
    unit: 'mm' as const,
  };
  await desk.specbook.addSpecification({
    ...given,
    feature: 'bore',
    low: '82.000',
    high: '82.020',
    wearLimit: '82.100',
  });
  await desk.specbook.addSpecification({
    ...given,
    feature: 'crankpin',
    low: '35.950',
    high: '35.966',
    wearLimit: '35.900',
  });
  const part = { by, price: 7200, cost: 4100 };
  const piston = await desk.parts.add({
    ...part,
    number: 'HV 740-25',
    description: 'Piston, 0.25 oversize, T 740',
  });
  await desk.parts.move({ by, partId: piston.id, kind: 'received', quantity: 1000 });
  await desk.parts.add({ ...part, number: 'HV 740-60', description: 'Piston +0.60 mm, T-740' });
  const gauge = await desk.bench.addGauge({
    by,
    name: 'Bore gauge',
    kind: 'bore-gauge',
    unit: 'mm',
    rangeLow: 50,
    rangeHigh: 100,
    resolution: 0.002,
    maxError: 0.004,
  });
  ({ jobId } = await desk.counter.takeIn(plainIntake(by)));
  await desk.bench.chooseEngineModel({ by, jobId, engineModelId: model.id });
  const places = ['top-along', 'top-across', 'middle-along', 'middle-across', 'bottom-along'];
  const sizes = {
    1: ['82.04', '82.05', '82.03', '82.04', '82.02', '82.03'],
    2: ['82.11', '82.16', '82.09', '82.12', '82.05', '82.06'],
  };
  for (const cylinder of [1, 2] as const)
    for (const [index, place] of [...places, 'bottom-across'].entries())
      await desk.bench.record({
        by,
        jobId,
        feature: 'bore',
        place: `c${cylinder}-${place}`,
        phase: 'as-received',
        text: sizes[cylinder][index] ?? '',
        unit: 'mm',
        gaugeId: gauge.id,
      });
});
afterAll(() => shop.close());

const partOf = async (subject: string, cylinder: number, allowance?: number) => {
  const { parts } = await shop.desk.bench.decisions({ jobId, allowance });
  const part = parts.find((each) => each.subject === subject && each.cylinder === cylinder);
  if (part === undefined) throw new Error(`No ${subject} ${cylinder}.`);
  return part;
};

const decide = (more: object) =>
  shop.desk.bench.decide({
    by: shop.by,
    jobId,
    subject: 'cylinder',
    cylinder: 2,
    choice: 'next-oversize',
    ...more,
  });

describe('advice on the worn twin', () => {
  test('is to hone the sound bore and bore the worn one, with the figures it comes from', async () => {
    expect((await partOf('cylinder', 1)).advice).toMatchObject({ choice: 'hone' });
    const worn = await partOf('cylinder', 2);
    expect(worn.advice).toMatchObject({ choice: 'next-oversize', step: 0.25 });
    expect(worn.advice.reason).toContain('82.16\u00A0mm (top, across the crankshaft)');
    expect(worn.figures[0]).toMatchObject({ feature: 'bore', value: 82.16, verdict: 'outside' });
  });

  test('asks for a larger step where more stock is to come off', async () => {
    expect((await partOf('cylinder', 2, 0.1)).advice).toMatchObject({ step: 0.5 });
  });

  test('shows each step with its size and the pistons of the shelf, theirs among the steps', async () => {
    const { steps } = await partOf('cylinder', 2);
    expect(steps.map(({ step }) => step)).toEqual([0.25, 0.5, 0.6, 0.75, 1]);
    expect(steps[0]).toMatchObject({
      machineTo: { low: 82.25, high: 82.27 },
      parts: [{ number: 'HV 740-25', onHand: 1000 }],
    });
    expect(steps[1]?.parts).toEqual([]);
    expect(steps[2]?.parts).toMatchObject([{ number: 'HV 740-60', onHand: 0 }]);
  });

  test('offers what somebody said fits before what words tell', async () => {
    const { desk, by } = shop;
    const engineModelId = (await desk.bench.sheet({ jobId })).engineModel?.id;
    if (engineModelId === undefined) throw new Error('No engine model.');
    const facts = { by, price: 6_900, number: 'RB 2', description: 'Second rebore, red box' };
    const { id: partId } = await desk.parts.add(facts);
    const fits = [{ engineModelId, fitted: 'piston' as const, step: 0.25 }];
    expect(await desk.parts.setFits({ by, partId, fits })).toMatchObject([{ step: 0.25 }]);
    const { steps } = await partOf('cylinder', 2);
    expect(steps[0]?.parts.map(({ number }) => number)).toEqual(['RB 2', 'HV 740-25']);
    await desk.parts.setFits({ by, partId, fits: [] });
  });

  test('decides nothing: no part has a decision, and nothing is proposed', async () => {
    const { parts } = await shop.desk.bench.decisions({ jobId });
    expect(parts).toHaveLength(21);
    expect(parts.every(({ standing }) => standing === null)).toBe(true);
    expect(await shop.desk.bench.proposals({ jobId })).toEqual({ lines: [], moveTo: null });
  });
});

test('advice is taken from what came in: a finished bore says nothing of it', async () => {
  const { desk, by } = shop;
  const final = await desk.bench.record({
    by,
    jobId,
    feature: 'bore',
    place: 'c1-top-across',
    phase: 'final',
    text: '82.30',
    unit: 'mm',
    keepAsTyped: true,
  });
  expect(final.verdict).toBe('outside');
  const { advice, figures } = await partOf('cylinder', 1);
  expect(advice).toMatchObject({ choice: 'hone' });
  expect(figures[0]).toMatchObject({ feature: 'bore', value: 82.05 });
});

describe('a decision', () => {
  test('is refused, and writes nothing, where it can’t be', async () => {
    const before = shop.contents();
    const refused = async (more: object, code: string, data?: object) =>
      expect(decide(more)).rejects.toMatchObject({ code, defined: true, ...(data && { data }) });
    await refused({ choice: 'undersize' }, 'CHOICE_UNSUITED');
    await refused({ cylinder: 3 }, 'PART_UNKNOWN');
    await refused({ subject: 'crankshaft', choice: 'reuse' }, 'PART_UNKNOWN');
    await refused({ choice: 'stop', reason: 'no' }, 'REASON_WANTED', { why: 'stop' });
    await refused({ choice: 'hone' }, 'REASON_WANTED', { why: 'against-advice' });
    await refused({ step: 0.5 }, 'REASON_WANTED', { why: 'against-advice' });
    await refused({ choice: 'reuse', reason: 'Looks fine to me', step: 0.25 }, 'BAD_INPUT', {
      issues: [{ path: 'step' }],
    });
    await refused({ subject: 'crankshaft', cylinder: 0, choice: 'undersize' }, 'BAD_INPUT', {
      issues: [{ path: 'step' }],
    });
    await refused(
      { subject: 'piston', step: 0.25, machineTo: { low: 82, high: 82.1 } },
      'BAD_INPUT',
      { issues: [{ path: 'machineTo' }] },
    );
    await refused({ machineTo: { low: 82.3, high: 82.2 } }, 'BAD_INPUT');
    await refused({ supersedes: '01900000-0000-7000-8000-000000000000' }, 'NOT_FOUND');
    expect(shop.contents()).toBe(before);
  });

  test('as advised stands with its step and the size to machine to', async () => {
    await decide({});
    const { standing, superseded } = await partOf('cylinder', 2);
    expect(standing).toMatchObject({
      choice: 'next-oversize',
      step: 0.25,
      machineTo: { low: 82.25, high: 82.27 },
      by: 'Ruth Okafor',
      supersedes: null,
    });
    expect(superseded).toEqual([]);
    for (const subject of ['piston', 'rings'])
      expect((await partOf(subject, 2)).advice).toMatchObject({
        choice: 'next-oversize',
        step: 0.25,
      });
  });

  test('does not overtake one that somebody took meanwhile', async () => {
    await expect(decide({})).rejects.toMatchObject({ code: 'SUPERSEDED_ALREADY' });
  });

  test('taken anew supersedes: the old one stays readable', async () => {
    const first = (await partOf('cylinder', 2)).standing;
    await decide({
      step: 0.6,
      machineTo: { low: 82.605, high: 82.62 },
      reason: 'The 0.60 piston is promised for Monday.',
      supersedes: first?.id,
    });
    const { standing, superseded } = await partOf('cylinder', 2);
    expect(standing).toMatchObject({
      step: 0.6,
      machineTo: { low: 82.605, high: 82.62 },
      supersedes: first?.id,
    });
    expect(superseded).toEqual([first]);
    await expect(decide({ supersedes: first?.id })).rejects.toMatchObject({
      code: 'SUPERSEDED_ALREADY',
    });
    await decide({ supersedes: standing?.id });
    expect((await partOf('cylinder', 2)).superseded).toHaveLength(2);
  });
});

// What the bore was decided to be is what it is held against; common practice, no source.
test('a bore that was decided oversize is judged as such once it is machined', async () => {
  const { desk, by } = shop;
  const read = async (cylinder: number, phase: 'as-received' | 'after-machining', text: string) => {
    const place = `c${cylinder}-bottom-across`;
    const asked = { by, jobId, feature: 'bore', place, phase, text, unit: 'mm' } as const;
    const { verdict, low, high } = await desk.bench.record(asked);
    return { verdict, low, high };
  };
  expect(await read(2, 'after-machining', '82.26')).toEqual({
    verdict: 'within',
    low: 82.25,
    high: 82.27,
  });
  expect(await read(2, 'after-machining', '82.01')).toMatchObject({ verdict: 'outside' });
  expect(await read(2, 'as-received', '82.06')).toEqual({ verdict: 'within', low: 82, high: 82.1 });
  expect(await read(1, 'after-machining', '82.26')).toMatchObject({ verdict: 'outside' });

  const { features, derived } = await desk.bench.sheet({ jobId });
  const bore = features.find(({ feature }) => feature === 'bore');
  expect(bore?.places.map(({ decided }) => decided?.step ?? 0)).toEqual([
    ...Array.from({ length: 6 }, () => 0),
    ...Array.from({ length: 6 }, () => 0.25),
  ]);
  // Wear counts from what it was bored to; the last reading stands.
  expect(
    derived.find(
      ({ feature, cylinder, phase }) =>
        feature === 'bore-wear' && cylinder === 2 && phase === 'after-machining',
    )?.value,
  ).toBeCloseTo(82.01 - 82.25, 9);
  // What else stands on the sheet: the decision, a source that says otherwise, the photos.
  const held = bore?.specification;
  if (!held) throw new Error('The book has no bore.');
  const card = await desk.specbook.addSource({ by, kind: 'suppliers-sheet', title: 'Piston card' });
  await desk.specbook.contradict({
    by,
    specificationId: held.id,
    sourceId: card.id,
    page: '2',
    low: '82.010',
    high: '82.030',
    unit: 'mm',
  });
  await desk.bench.addPhoto({
    by,
    jobId,
    subject: 'bore',
    caption: 'Scored on the thrust side',
    bytes: PIXEL,
  });
  const { id } = await desk.bench.printClearanceSheet({ by, jobId, bothUnits: false });
  const paper = await readPaper(
    Uint8Array.from(Buffer.from((await desk.office.paper({ id })).pdf, 'base64')),
  );
  expect(paper.text).toContain('cylinder 2, bottom, across the crankshaft: 82.25 to 82.27 mm,');
  expect(paper.text).toContain('+0.25 mm decided');
  expect(paper.text).toMatch(/Next oversize, 0\.25 mm\s+82\.25 to 82\.27 mm\s+Ruth Okafor/);
  expect(paper.text).toMatch(/SOURCES DISAGREE\s+82\.010 to 82\.030 mm, Piston card, page 2\./);
  expect(paper.text).toMatch(/Cylinder bore: Scored on the thrust side\s+Ruth Okafor/);
});

describe('what follows', () => {
  test('is lines for the estimate, with the piston of the shelf at its price', async () => {
    await decide({ subject: 'piston' });
    const { lines, moveTo } = await shop.desk.bench.proposals({ jobId });
    expect(moveTo).toBeNull();
    expect(
      lines.map((line) => [line.kind, line.partNumber, line.unitPrice, line.priceToSet]),
    ).toEqual([
      ['outside', '', 0, true],
      ['part', 'HV 740-25', 7200, false],
      ['part', '', 0, true],
    ]);
    expect(lines[0]?.description).toBe(
      'Bore and hone cylinder 2 +0.25\u00A0mm, to 82.25–82.27\u00A0mm',
    );
    expect(lines[2]).toMatchObject({
      description: 'Gasket set, T-740',
      note: expect.stringContaining('Price to be set.'),
    });
  });

  test('of a stop is no line, and the proposal to move the job, which has not moved', async () => {
    const before = (await shop.desk.counter.job({ id: jobId })).state;
    await decide({
      subject: 'head',
      cylinder: 1,
      choice: 'stop',
      reason: 'Cracked between the seats.',
    });
    expect(await shop.desk.bench.proposals({ jobId })).toEqual({ lines: [], moveTo: 'stopped' });
    expect((await partOf('engine', 0)).advice).toMatchObject({ choice: 'stop' });
    expect((await shop.desk.counter.job({ id: jobId })).state).toBe(before);
  });
});

test('a job that was handed over is closed: read, not decided on', async () => {
  const { desk, by } = shop;
  const unit = { kind: 'labour' as const, quantity: 1000, unit: 'h', unitPrice: 5000 };
  await desk.till.writeEstimate({ by, jobId, lines: [{ ...unit, description: 'Diagnosis' }] });
  await desk.counter.moveJob({ by, jobId, to: 'stopped', note: 'Cracked head' });
  await desk.till.issueInvoice({ by, jobId });
  await desk.till.takePayment({ by, jobId, kind: 'payment', method: 'cash', amount: 5000 });
  await desk.counter.handOver({
    by,
    jobId,
    workDone: 'Stripped and measured.',
    customerSignature: typed('Greta Lindqvist'),
    shopSignature: typed('Ruth Okafor'),
  });
  await expect(decide({ subject: 'rings', choice: 'replace' })).rejects.toMatchObject({
    code: 'JOB_CLOSED',
  });
  expect((await shop.desk.bench.decisions({ jobId })).closed).toBe(true);
});
