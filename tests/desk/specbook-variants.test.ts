import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { addCorvane, openTestShop, plainIntake, type TestShop } from './shop.ts';

let shop: TestShop;
beforeEach(async () => {
  shop = await openTestShop();
});
afterEach(() => shop.close());

async function aVariant() {
  const { desk, by } = shop;
  const family = await addCorvane(shop);
  const variant = await desk.specbook.addModel({
    by,
    make: 'Corvane',
    model: 'CV 170 H',
    cycle: 'four-stroke',
    cylinders: 1,
    variantOf: family.model.id,
  });
  return { family, variant };
}

describe('a variant of a family', () => {
  test('takes from the family what it does not state, and says so', async () => {
    const { desk } = shop;
    const { family, variant } = await aVariant();
    const named = { id: family.model.id, make: 'Corvane', model: 'CV 170' };
    expect(variant).toMatchObject({ variantOf: named, bore: 68, stroke: 46, specifications: 2 });
    const entry = await desk.specbook.model({ id: variant.id });
    expect(entry.specifications.map(({ id, inheritedFrom }) => ({ id, inheritedFrom }))).toEqual([
      { id: family.airGap.id, inheritedFrom: named },
      { id: family.headBolts.id, inheritedFrom: named },
    ]);
    const { variants } = await desk.specbook.model({ id: family.model.id });
    expect(variants).toEqual([{ id: variant.id, make: 'Corvane', model: 'CV 170 H' }]);
  });

  test('what it states itself goes before; the family keeps its own, each with its revisions', async () => {
    const { desk, by } = shop;
    const { family, variant } = await aVariant();
    const own = await desk.specbook.addSpecification({
      by,
      engineModelId: variant.id,
      feature: 'coil-air-gap',
      low: '0.5',
      high: '0.7',
      unit: 'mm',
      sourceId: family.manual.id,
    });
    expect(own).toMatchObject({ revision: 1, inheritedFrom: null });
    const of = async (id: typeof variant.id) =>
      (await desk.specbook.model({ id })).specifications.find(
        ({ feature }) => feature === 'coil-air-gap',
      );
    expect(await of(variant.id)).toMatchObject({ low: '0.5', inheritedFrom: null });
    expect(await of(family.model.id)).toMatchObject({ low: '0.2', revision: 1 });
    expect(
      await desk.specbook.revisions({ engineModelId: variant.id, feature: 'coil-air-gap' }),
    ).toHaveLength(1);
  });

  test('its readings are held against the merged list', async () => {
    const { desk, by } = shop;
    const { family, variant } = await aVariant();
    const { jobId } = await desk.counter.takeIn(plainIntake(by));
    await desk.bench.chooseEngineModel({ by, jobId, engineModelId: variant.id });
    const reading = await desk.bench.record({
      by,
      jobId,
      feature: 'coil-air-gap',
      place: 'c1-leg-1',
      phase: 'final',
      text: '0.3',
      unit: 'mm',
    });
    expect(reading).toMatchObject({ specificationId: family.airGap.id, low: 0.2, high: 0.4 });
  });

  test('has no variants of its own, and the cycle of its family', async () => {
    const { desk, by } = shop;
    const { family, variant } = await aVariant();
    const before = shop.contents();
    const facts = { by, make: 'Corvane', model: 'CV 170 HX', cylinders: 1 } as const;
    await expect(
      desk.specbook.addModel({ ...facts, cycle: 'four-stroke', variantOf: variant.id }),
    ).rejects.toMatchObject({
      code: 'VARIANT_OF_VARIANT',
      data: { family: { id: family.model.id } },
    });
    await expect(
      desk.specbook.addModel({ ...facts, cycle: 'two-stroke', variantOf: family.model.id }),
    ).rejects.toMatchObject({ code: 'BAD_INPUT', data: { issues: [{ path: 'cycle' }] } });
    expect(shop.contents()).toBe(before);
  });
});

describe('the torques of one thread', () => {
  test('are those that hold now, of every entry, whatever unit they are printed in', async () => {
    const { desk, by } = shop;
    const { headBolts, manual } = await addCorvane(shop);
    const other = await desk.specbook.addModel({
      by,
      make: 'Harrowgate',
      model: 'HG 210',
      cycle: 'four-stroke',
      cylinders: 1,
    });
    const bolts = {
      by,
      engineModelId: other.id,
      feature: 'head-bolt-torque',
      unit: 'N·m',
      sourceId: manual.id,
    } as const;
    const fastener = {
      diameter: 8,
      pitch: 1.25,
      propertyClass: '8.8',
      count: 6,
      pattern: 'cross',
      stages: [1],
    } as const;
    await desk.specbook.addSpecification({
      ...bolts,
      low: '20',
      high: '22',
      fastener: { ...fastener, stages: [1] },
    });
    const both = await desk.specbook.torquesOfThread({ diameter: 8, pitch: 1.25 });
    expect(
      both.map(({ engineModel, specification }) => [engineModel.model, specification.low]),
    ).toEqual([
      ['HG 210', '20'],
      ['CV 170', '16'],
    ]);
    expect(both[1]?.specification.id).toBe(headBolts.id);

    // The revision is about finer bolts: the coarse ones are no longer in that entry.
    await desk.specbook.addSpecification({
      ...bolts,
      low: '20',
      high: '22',
      fastener: { ...fastener, pitch: 1, stages: [1] },
    });
    expect(await desk.specbook.torquesOfThread({ diameter: 8, pitch: 1.25 })).toHaveLength(1);
    expect(await desk.specbook.torquesOfThread({ diameter: 8, pitch: 1 })).toHaveLength(1);
    expect(await desk.specbook.torquesOfThread({ diameter: 6, pitch: 1 })).toEqual([]);
  });
});
