import type { Page } from '@playwright/test';
import type { EngineModelId, GaugeId, JobId, StaffId } from '../../shared/contract/ids.ts';
import { type Desk, deskAt, ownerOf } from './desk-client.ts';
import { test as base, expect } from './fixtures.ts';
import { toldNow } from './told-time.ts';

/** Tests of one worker share a shop: names are made once. */
let made = 0;
export const unique = (name: string): string =>
  `${name} ${toldNow().getTime().toString(36)}${++made}`;

export interface BenchJob {
  code: string;
  jobId: JobId;
  engineModelId: EngineModelId;
  engineModel: string;
  gaugeId: GaugeId;
  gaugeName: string;
}

/** The engine of the tests: invented, with the common practice of an air gap and a valve lash. */
async function quillSingle(desk: Desk, by: StaffId) {
  const model = await desk.specbook.addModel({
    by,
    make: 'Quill',
    model: unique('Q160'),
    cycle: 'four-stroke',
    cylinders: 1,
    bore: 68,
    stroke: 45,
  });
  const manual = await desk.specbook.addSource({
    by,
    kind: 'makers-manual',
    title: 'Quill Q series workshop manual',
    edition: '3rd',
  });
  const facts = {
    by,
    engineModelId: model.id,
    sourceId: manual.id,
    page: '12',
    unit: 'mm',
  } as const;
  await desk.specbook.addSpecification({ ...facts, feature: 'bore', low: '68.00', high: '68.04' });
  await desk.specbook.addSpecification({
    ...facts,
    feature: 'coil-air-gap',
    low: '0.2',
    high: '0.4',
    aim: '0.3',
  });
  await desk.specbook.addSpecification({
    ...facts,
    feature: 'head-bolt-torque',
    unit: 'lbf·ft',
    low: '16',
    high: '18',
    aim: '17',
    fastener: {
      diameter: 8,
      pitch: 1.25,
      propertyClass: '8.8',
      count: 4,
      pattern: 'cross',
      stages: [0.5, 1],
    },
  });
  return model;
}

/** A job whose engine is chosen and specified, with a gauge for lengths. */
export async function benchJob(desk: Desk, by: StaffId): Promise<BenchJob> {
  const model = await quillSingle(desk, by);
  const { jobId, code } = await takenIn(desk, by, model.model);
  await desk.bench.chooseEngineModel({ by, jobId, engineModelId: model.id });
  const gauge = await desk.bench.addGauge({
    by,
    name: unique('Bore gauge'),
    kind: 'bore-gauge',
    unit: 'mm',
    rangeLow: 50,
    rangeHigh: 100,
    resolution: 0.002,
    maxError: 0.005,
    calibratedOn: '2024-01-10',
    calibrationDue: '2025-01-10',
  });
  return {
    code,
    jobId,
    engineModelId: model.id,
    engineModel: model.model,
    gaugeId: gauge.id,
    gaugeName: gauge.name,
  };
}

/** A job whose engine has no entry in the spec book yet. */
export const takenIn = (desk: Desk, by: StaffId, engineModel: string) =>
  desk.counter.takeIn({
    by,
    customer: { which: 'new', name: 'Ødegård Berg' },
    machine: {
      which: 'new',
      kind: 'tiller',
      make: 'Fennick',
      model: 'Row 5',
      serial: unique('FR'),
      engine: { make: 'Quill', model: engineModel, serial: unique('E') },
    },
    complaint: 'Will not start',
    signature: { name: 'Ødegård Berg' },
  });

/** What was read at each place of a feature. */
export const readingsOf = async (desk: Desk, jobId: JobId, wanted: string) =>
  (await desk.bench.sheet({ jobId })).features
    .find(({ feature }) => feature === wanted)
    ?.places.map(({ readings }) => readings);

export const test = base.extend<{ desk: Desk; by: StaffId }>({
  desk: async ({ server, session }, use) => {
    await use(deskAt(server.origin, session));
  },
  by: async ({ desk, page }, use) => {
    const owner = await ownerOf(desk);
    await page.addInitScript((id) => window.localStorage.setItem('tappet.station', id), owner.id);
    await use(owner.id);
  },
});

/** The one field of the bench. */
export const readingField = (page: Page) => page.getByRole('textbox', { name: /^Measure now/ });

export { expect };
