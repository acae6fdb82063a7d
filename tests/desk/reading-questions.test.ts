import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { JobId } from '../../shared/contract/ids.ts';
import { addCorvane, openTestShop, plainIntake, type TestShop } from './shop.ts';

let shop: TestShop;
let jobId: JobId;

beforeAll(async () => {
  shop = await openTestShop();
  const { desk, by } = shop;
  const { model } = await addCorvane(shop);
  ({ jobId } = await desk.counter.takeIn(plainIntake(by)));
  await desk.bench.chooseEngineModel({ by, jobId, engineModelId: model.id });
});
afterAll(() => shop.close());

type Recorded = Parameters<TestShop['desk']['bench']['record']>[0];

const record = (
  feature: Recorded['feature'],
  place: string,
  text: string,
  more: Partial<Recorded> = {},
) =>
  shop.desk.bench.record({
    by: shop.by,
    jobId,
    feature,
    place,
    phase: 'final',
    text,
    unit: 'mm',
    ...more,
  });

describe('a pair without a band', () => {
  test('the second reading is questioned when it disagrees by a factor', async () => {
    await record('ring-end-gap', 'c1-top-ring', '0.26');
    const before = shop.contents();
    await expect(record('ring-end-gap', 'c1-second-ring', '0.028')).rejects.toMatchObject({
      code: 'READING_QUESTIONED',
      data: { kind: 'decimal', likely: 0.28, unit: 'mm', against: 'pair' },
    });
    expect(shop.contents()).toBe(before);
    expect(
      await record('ring-end-gap', 'c1-second-ring', '0.028', { keepAsTyped: true }),
    ).toMatchObject({ verdict: 'no-band', questioned: { kind: 'decimal', likely: 0.28 } });
  });

  test('one that agrees is not, nor the first, nor one of another phase', async () => {
    await record('ring-side-clearance', 'c1-top-ring', '0.04');
    await record('ring-side-clearance', 'c1-second-ring', '0.06');
    await record('ring-end-gap', 'c1-second-ring', '0.028', { phase: 'as-received' });
  });

  test('a valve closed and the same valve open are no pair', async () => {
    await record('valve-travel-intake', 'c1-closed', '0.6');
    await record('valve-travel-intake', 'c1-open', '6.1');
    const { derived } = await shop.desk.bench.sheet({ jobId });
    expect(derived.find(({ feature }) => feature === 'valve-lift-intake')?.value).toBeCloseTo(5.5);
  });

  test('with a band it is the band that is asked', async () => {
    await record('coil-air-gap', 'c1-leg-1', '0.3');
    await expect(record('coil-air-gap', 'c1-leg-2', '0.03')).rejects.toMatchObject({
      data: { against: 'band' },
    });
  });
});

describe('valve lash', () => {
  test('is refused until it is said where the engine stands', async () => {
    const before = shop.contents();
    await expect(record('valve-lash-intake', 'c1-only', '0.15')).rejects.toMatchObject({
      code: 'POSITION_WANTED',
      defined: true,
    });
    expect(shop.contents()).toBe(before);
    expect(
      await record('valve-lash-intake', 'c1-only', '0.15', {
        position: 'just-past-top-dead-centre',
      }),
    ).toMatchObject({ position: 'just-past-top-dead-centre' });
  });

  test('what doesn’t depend on it keeps none', async () => {
    expect(
      await record('plug-gap', 'c1-only', '0.75', { position: 'at-top-dead-centre' }),
    ).toMatchObject({ position: null });
  });
});

describe('the sheet', () => {
  test('asks for the core list and for what is known or measured; the rest is there too', async () => {
    const { features } = await shop.desk.bench.sheet({ jobId });
    const asked = (feature: Recorded['feature']) =>
      features.find((each) => each.feature === feature)?.asked;
    expect(asked('bore')).toBe(true);
    expect(asked('ring-side-clearance')).toBe(true);
    expect(asked('seat-width')).toBe(false);
  });

  test('shows beside a place what the same engine showed on an earlier job', async () => {
    const { desk, by } = shop;
    const { machineDetails, customerId } = await desk.counter.job({ id: jobId });
    const again = await desk.counter.takeIn({
      ...plainIntake(by),
      customer: { which: 'known', id: customerId },
      machine: { which: 'known', id: machineDetails.id, takeInAgain: true },
    });
    const gapOf = async (id: JobId) =>
      (await desk.bench.sheet({ jobId: id })).features
        .find(({ feature }) => feature === 'ring-end-gap')
        ?.places.map(({ earlier }) => earlier.map(({ text, phase }) => [text, phase]));
    expect(await gapOf(again.jobId)).toEqual([
      [['0.26', 'final']],
      [
        ['0.028', 'as-received'],
        ['0.028', 'final'],
      ],
    ]);
    // The job itself is no earlier job of its own, and a later one is none either.
    expect(await gapOf(jobId)).toEqual([[], []]);
  });
});
