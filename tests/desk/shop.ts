import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { ContractRouterClient } from '@orpc/contract';
import { createRouterClient } from '@orpc/server';
import { sql } from 'drizzle-orm';
import { openStore, type Store } from '../../db/store.ts';
import {
  type DeskContext,
  desk,
  deskInterceptors,
  undisturbed,
} from '../../electron/desk/index.ts';
import type { StaffId } from '../../shared/contract/ids.ts';
import type { Contract } from '../../shared/contract/index.ts';

/** A small shop of one owner for tests of the desk, in a folder of its own, with a clock that steps. */
export interface TestShop {
  desk: ContractRouterClient<Contract>;
  by: StaffId;
  context: DeskContext;
  folder: string;
  /** Sets the clock; each reading of it goes on by a minute. */
  setClock: (instant: string) => void;
  /** A hash over every row of every table. */
  contents: () => string;
  close: () => void;
}

export const typed = (name: string) => ({ name });

const STEP = 60_000;

/** Stands for a PDF: drawing has tests of its own, and takes longer than the rest of a call. */
const blankPaper: DeskContext['drawPaper'] = () => new TextEncoder().encode('%PDF-');

/** @param options `{ drawPaper }` of `electron/paper` for a test that looks at its papers */
export async function openTestShop(
  options: Partial<Pick<DeskContext, 'drawPaper'>> = {},
): Promise<TestShop> {
  const folder = mkdtempSync(join(tmpdir(), 'tappet-desk-'));
  const store = openStore(folder, { careless: true });
  let clock = Date.parse('2026-03-02T15:00:00.000Z');
  const now = () => {
    clock += STEP;
    return new Date(clock);
  };
  const context: DeskContext = {
    store,
    now,
    drawPaper: blankPaper,
    program: { version: '0.0.0' },
    alone: undisturbed,
    ...options,
  };
  const client = createRouterClient(desk, { context, interceptors: deskInterceptors });
  const owner = await client.office.openShop({
    ownerName: 'Ruth Okafor',
    shopName: 'Millbrook Small Engines',
    currency: 'USD',
    locale: 'en-US',
    timeZone: 'America/Chicago',
    country: 'US',
    paperSize: 'Letter',
  });
  return {
    desk: client,
    by: owner.id,
    context,
    folder,
    setClock: (instant) => {
      clock = Date.parse(instant);
    },
    contents: () => contentsOf(store),
    close: () => {
      store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function contentsOf(store: Store): string {
  const hash = createHash('sha256');
  store.write((inside) => {
    const tables = inside.all<{ name: string }>(
      sql`SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name`,
    );
    for (const { name } of tables)
      for (const row of inside.all(sql`SELECT * FROM ${sql.identifier(name)}`))
        hash.update(JSON.stringify([name, row]));
  });
  return hash.digest('hex');
}

/** An intake with nothing special about it. */
export const plainIntake = (by: StaffId) => ({
  by,
  customer: { which: 'new' as const, name: 'Greta Lindqvist', phone: '(312) 555-0142' },
  machine: {
    which: 'new' as const,
    kind: 'tiller' as const,
    make: 'Furrowmaster',
    model: 'F5',
    serial: 'FM-5 0042',
    engine: { make: 'Corvane', model: 'CV 170', serial: '77120' },
  },
  complaint: 'Smokes, no power uphill',
  spendingLimit: 10_000,
  promisedFor: '2026-03-20',
  signature: typed('Greta Lindqvist'),
});

/** An engine model with the specifications that most tests measure against. */
export async function addCorvane({ desk: client, by }: TestShop) {
  const model = await client.specbook.addModel({
    by,
    make: 'Corvane',
    model: 'CV 170',
    cycle: 'four-stroke',
    cylinders: 1,
    bore: 68,
    stroke: 46,
  });
  const manual = await client.specbook.addSource({
    by,
    kind: 'makers-manual',
    title: 'CV 170 workshop manual',
    edition: '3rd edition',
  });
  const airGap = await client.specbook.addSpecification({
    by,
    engineModelId: model.id,
    feature: 'coil-air-gap',
    low: '0.2',
    high: '0.4',
    aim: '0.3',
    unit: 'mm',
    sourceId: manual.id,
    page: '41',
  });
  const headBolts = await client.specbook.addSpecification({
    by,
    engineModelId: model.id,
    feature: 'head-bolt-torque',
    low: '16',
    high: '18',
    aim: '17',
    unit: 'lbf·ft',
    sourceId: manual.id,
    page: '22',
    fastener: {
      diameter: 8,
      pitch: 1.25,
      propertyClass: '8.8',
      count: 4,
      pattern: 'cross',
      stages: [0.5, 1],
    },
  });
  return { model, manual, airGap, headBolts };
}
