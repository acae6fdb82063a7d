import type { DemoSpecification } from '../../../db/demo/engines/engine.ts';
import { DEMO_ENGINES, DEMO_VARIANTS, type EngineKey } from '../../../db/demo/engines/index.ts';
import { DEMO_GAUGES, type GaugeKey } from '../../../db/demo/gauges.ts';
import { onePagePdf } from '../../../db/demo/one-page-pdf.ts';
import {
  DEMO_PARTS,
  type DemoPart,
  type PartNumber,
  type SupplierName,
} from '../../../db/demo/parts.ts';
import { DEMO_SHOP } from '../../../db/demo/shop.ts';
import { DEMO_SOURCES, type DemoSource, type SourceKey } from '../../../db/demo/sources.ts';
import { DEMO_STAFF, type StaffKey } from '../../../db/demo/staff.ts';
import { shop as shopTable } from '../../../db/schema/index.ts';
import { FEATURES, type Feature } from '../../../shared/work/features.ts';
import type { DeskContext } from '../../desk/index.ts';
import type { DeskClient } from './client.ts';
import type { StoryClock } from './story-clock.ts';
import { enterSuppliers } from './suppliers.ts';

type Ids<K extends string> = ReadonlyMap<K, string>;

/** The invented shop once it is set up: who and what its store knows, by the names of the stories. */
export interface OpenShop {
  desk: DeskClient;
  clock: StoryClock;
  staff: Ids<StaffKey>;
  engines: Ids<EngineKey>;
  gauges: Ids<GaugeKey>;
  parts: ReadonlyMap<string, string>;
  suppliers: Ids<SupplierName>;
}

/** @throws Error for a name that the shop doesn't know: a slip in the stories */
export function idOf<K extends string>(ids: ReadonlyMap<K, string>, key: K): string {
  const id = ids.get(key);
  if (id === undefined) throw new Error(`The invented shop has no '${key}'.`);
  return id;
}

const keysOf = <K extends string>(record: Record<K, unknown>): K[] => Object.keys(record) as K[];

/** Which engines and parts a shop begins with. */
export interface Stock {
  engines: readonly EngineKey[];
  parts: readonly DemoPart[];
}

export const ALL_STOCK: Stock = { engines: keysOf(DEMO_ENGINES), parts: DEMO_PARTS };

/** Opens the shop: owner and staff, heading and terms, gauges, spec book, shelves. */
export async function openDemoShop(
  desk: DeskClient,
  clock: StoryClock,
  stock: Stock,
): Promise<OpenShop> {
  const staff = await hire(desk);
  const by = idOf(staff, 'ruth');
  await desk.office.setShop({ by, ...DEMO_SHOP });
  const gauges = new Map<GaugeKey, string>();
  for (const key of keysOf(DEMO_GAUGES)) {
    const { calibrated, due, ...gauge } = DEMO_GAUGES[key];
    const { id } = await desk.bench.addGauge({
      by: idOf(staff, 'ignacio'),
      ...gauge,
      calibratedOn: clock.date(calibrated),
      calibrationDue: clock.date(due),
    });
    gauges.set(key, id);
  }
  const engines = await writeSpecBook(desk, staff, stock.engines);
  const suppliers = await enterSuppliers(desk, by);
  const parts = await fillShelves(desk, by, stock.parts);
  return { desk, clock, staff, engines, gauges, parts, suppliers };
}

async function hire(desk: DeskClient): Promise<Map<StaffKey, string>> {
  const { name, currency, locale, timeZone, country, paperSize } = DEMO_SHOP;
  const owner = await desk.office.openShop({
    ownerName: DEMO_STAFF.ruth.name,
    shopName: name,
    currency,
    locale,
    timeZone,
    country,
    paperSize,
  });
  const ids = new Map<StaffKey, string>([['ruth', owner.id]]);
  for (const key of keysOf(DEMO_STAFF)) {
    if (ids.has(key)) continue;
    const { id } = await desk.office.addStaff({ by: owner.id, ...DEMO_STAFF[key] });
    ids.set(key, id);
  }
  return ids;
}

async function writeSpecBook(
  desk: DeskClient,
  staff: Ids<StaffKey>,
  keys: readonly EngineKey[],
): Promise<Map<EngineKey, string>> {
  const sources = new Map<SourceKey, string>();
  const source = async (key: SourceKey): Promise<string> => {
    const known = sources.get(key);
    if (known !== undefined) return known;
    const { file, ...facts }: DemoSource = DEMO_SOURCES[key];
    const by = idOf(staff, 'ruth');
    const { id } = await desk.specbook.addSource({ by, ...facts });
    if (file !== undefined)
      await desk.specbook.addSourceFile({
        by,
        sourceId: id,
        fileName: file.fileName,
        bytes: onePagePdf(file.page).toString('base64'),
      });
    sources.set(key, id);
    return id;
  };
  const specify = async (
    by: string,
    engineModelId: string,
    specifications: Partial<Record<Feature, DemoSpecification>>,
  ): Promise<void> => {
    for (const feature of FEATURES) {
      const entry = specifications[feature];
      if (entry === undefined) continue;
      const { source: from, confirmed, contradicted, ...printed } = entry;
      const { id: specificationId } = await desk.specbook.addSpecification({
        by,
        engineModelId,
        feature,
        sourceId: await source(from),
        ...printed,
      });
      if (confirmed !== undefined)
        await desk.specbook.confirm({
          by: idOf(staff, confirmed.by),
          specificationId,
          sourceId: await source(confirmed.source ?? from),
          page: confirmed.page ?? printed.page,
        });
      if (contradicted !== undefined) {
        const { by: reader, source: other, ...says } = contradicted;
        await desk.specbook.contradict({
          by: idOf(staff, reader),
          specificationId,
          sourceId: await source(other),
          unit: printed.unit,
          ...says,
        });
      }
    }
  };
  const engines = new Map<EngineKey, string>();
  for (const key of keys) {
    const { specifications, ...facts } = DEMO_ENGINES[key];
    // Whoever checks an entry is somebody else than whoever made it.
    const enters = key === 'oh172' || key === 'd680' ? 'wren' : 'ignacio';
    const by = idOf(staff, enters);
    const { id } = await desk.specbook.addModel({ by, ...facts });
    engines.set(key, id);
    await specify(by, id, specifications);
    for (const { specifications: own, ...named } of DEMO_VARIANTS[key] ?? []) {
      const { make, cycle, cylinders } = facts;
      const variant = await desk.specbook.addModel({
        by,
        make,
        cycle,
        cylinders,
        ...named,
        variantOf: id,
      });
      await specify(by, variant.id, own);
    }
  }
  return engines;
}

async function fillShelves(
  desk: DeskClient,
  by: string,
  stock: readonly DemoPart[],
): Promise<Map<string, string>> {
  const ids = new Map<string, string>();
  for (const { stock: pieces, reorderAt, ...part } of stock) {
    const { id } = await desk.parts.add({ by, ...part, reorderPoint: reorderAt * 1000 });
    ids.set(part.number, id);
    if (pieces > 0)
      await desk.parts.move({
        by,
        partId: id,
        kind: 'received',
        quantity: pieces * 1000,
        reason: 'Opening stock',
      });
  }
  return ids;
}

export const partId = ({ parts }: OpenShop, number: PartNumber): string => idOf(parts, number);

/** Marks the store as the invented shop's, so that nobody takes it for their own. */
export const markAsDemo = ({ store }: DeskContext): void =>
  store.write((tables) => {
    tables.update(shopTable).set({ demo: true }).run();
  });
