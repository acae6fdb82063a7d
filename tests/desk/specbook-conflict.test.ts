import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { SpecificationId, StaffId } from '../../shared/contract/ids.ts';
import { addCorvane, openTestShop, type TestShop } from './shop.ts';

let shop: TestShop;
let second: StaffId;
beforeEach(async () => {
  shop = await openTestShop();
  const { by, desk } = shop;
  second = (await desk.office.addStaff({ by, name: 'Ola Brandt', role: 'bench' })).id;
});
afterEach(() => shop.close());

const aSource = (kind: 'bulletin' | 'suppliers-sheet', title: string) =>
  shop.desk.specbook.addSource({ by: shop.by, kind, title });

const against = (specificationId: SpecificationId, sourceId: string, low: string, high: string) =>
  ({ by: shop.by, specificationId, sourceId, page: '3', low, high, unit: 'mm' }) as Parameters<
    TestShop['desk']['specbook']['contradict']
  >[0];

describe('another source prints other figures', () => {
  test('both are shown as printed, and nothing confirms the figure while they differ', async () => {
    const { desk } = shop;
    const { model, airGap, manual } = await addCorvane(shop);
    const confirmed = await desk.specbook.confirm({
      by: second,
      specificationId: airGap.id,
      sourceId: manual.id,
    });
    expect(confirmed.standing).toBe('confirmed');

    const bulletin = await aSource('bulletin', 'Corvane bulletin 7');
    const contradicted = await desk.specbook.contradict({
      ...against(airGap.id, bulletin.id, '0.010', '0.014'),
      unit: 'in',
    });
    expect(contradicted).toMatchObject({
      low: '0.2',
      high: '0.4',
      lowBase: 0.2,
      standing: 'single-source',
      contradictions: [
        { source: { title: 'Corvane bulletin 7' }, page: '3', low: '0.010', unit: 'in' },
      ],
    });
    expect(contradicted.contradictions[0]?.lowBase).toBeCloseTo(0.254, 9);

    const sheet = await aSource('suppliers-sheet', 'Coil sheet');
    const vouched = await desk.specbook.confirm({
      by: second,
      specificationId: airGap.id,
      sourceId: sheet.id,
    });
    expect(vouched.standing).toBe('single-source');
    expect((await desk.specbook.model({ id: model.id })).model.contradicted).toBe(1);

    // A revision settles it; the one before keeps what was said against it.
    const { id, source, ...printed } = contradicted;
    const settled = await desk.specbook.addSpecification({
      by: second,
      engineModelId: printed.engineModelId,
      feature: 'coil-air-gap',
      low: '0.010',
      high: '0.014',
      unit: 'in',
      sourceId: bulletin.id,
    });
    expect(settled).toMatchObject({ revision: 2, contradictions: [], standing: 'single-source' });
    const revisions = await desk.specbook.revisions({
      engineModelId: model.id,
      feature: 'coil-air-gap',
    });
    expect(revisions.map(({ revision }) => revision)).toEqual([2, 1]);
    expect(revisions[1]).toMatchObject({ id, source, contradictions: [{ high: '0.014' }] });
    await expect(
      desk.specbook.contradict(against(airGap.id, sheet.id, '1', '2')),
    ).rejects.toMatchObject({ code: 'REVISED_SINCE' });
  });

  test('the bench sees it beside its specification', async () => {
    const { desk, by } = shop;
    const { model, airGap } = await addCorvane(shop);
    const bulletin = await aSource('bulletin', 'Corvane bulletin 7');
    await desk.specbook.contradict(against(airGap.id, bulletin.id, '0.3', '0.5'));
    const { jobId } = await desk.counter.takeIn({
      by,
      customer: { which: 'new', name: 'Greta Lindqvist' },
      machine: {
        which: 'new',
        kind: 'tiller',
        make: 'Furrowmaster',
        model: 'F5',
        serial: 'FM-5 0042',
        engine: { make: 'Corvane', model: 'CV 170', serial: '77120' },
      },
      complaint: 'Smokes',
      signature: { name: 'Greta Lindqvist' },
    });
    const sheet = await desk.bench.chooseEngineModel({ by, jobId, engineModelId: model.id });
    expect(
      sheet.features.find(({ feature }) => feature === 'coil-air-gap')?.specification,
    ).toMatchObject({ contradictions: [{ low: '0.3', high: '0.5' }] });
  });

  test('a source that says the same, and the specification’s own, are refused', async () => {
    const { desk } = shop;
    const { airGap, manual } = await addCorvane(shop);
    const bulletin = await aSource('bulletin', 'Corvane bulletin 7');
    const before = shop.contents();
    await expect(
      desk.specbook.contradict(against(airGap.id, bulletin.id, '0.20', '0.40')),
    ).rejects.toMatchObject({ code: 'SAME_FIGURES' });
    await expect(
      desk.specbook.contradict(against(airGap.id, manual.id, '0.3', '0.5')),
    ).rejects.toMatchObject({ code: 'SAME_SOURCE' });
    await expect(
      desk.specbook.contradict(against(airGap.id, bulletin.id, 'thick', '0.4')),
    ).rejects.toMatchObject({ code: 'BAD_INPUT', data: { issues: [{ path: 'low' }] } });
    expect(shop.contents()).toBe(before);
  });

  test('what was written down wrongly is taken back by writing it down as it stands there', async () => {
    const { desk } = shop;
    const { airGap } = await addCorvane(shop);
    const bulletin = await aSource('bulletin', 'Corvane bulletin 7');
    await desk.specbook.contradict(against(airGap.id, bulletin.id, '2', '4'));
    const mended = await desk.specbook.contradict(against(airGap.id, bulletin.id, '0.2', '0.4'));
    expect(mended.contradictions).toEqual([]);
  });
});
