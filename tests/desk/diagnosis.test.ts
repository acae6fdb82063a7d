import { afterAll, beforeAll, expect, test } from 'vitest';
import type { JobId } from '../../shared/contract/ids.ts';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

let shop: TestShop;
let jobId: JobId;
beforeAll(async () => {
  shop = await openTestShop();
  jobId = (await shop.desk.counter.takeIn(plainIntake(shop.by))).jobId;
});
afterAll(() => shop.close());

const low = (text: string) => [{ cylinder: 1, text, unit: 'psi' as const }];

test('findings stand in the order of the checks, with what they take as lines of the estimate', async () => {
  const { desk, by } = shop;
  await desk.bench.noteFinding({
    by,
    jobId,
    check: 'compression',
    found: 'wants-work',
    figures: low('45'),
    words: 'With a little oil in it: 80 psi',
    work: [{ kind: 'labour', description: 'Strip and measure the cylinder' }],
  });
  const { findings, lines, cylinders } = await desk.bench.noteFinding({
    by,
    jobId,
    check: 'spark',
    found: 'sound',
  });
  expect(cylinders).toBe(1);
  expect(findings).toMatchObject([
    { check: 'spark', found: 'sound', figures: [], by: 'Ruth Okafor' },
    {
      check: 'compression',
      figures: [{ text: '45', unit: 'psi', base: expect.closeTo(310.26, 1) }],
    },
  ]);
  expect(lines).toMatchObject([
    { kind: 'labour', description: 'Strip and measure the cylinder', priceFrom: 'labour-rate' },
  ]);
});

test('a correction takes its place, and what was noted first stays to be read', async () => {
  const { desk, by } = shop;
  const before = await desk.bench.diagnosis({ jobId });
  const first = before.findings.find(({ check }) => check === 'compression');
  const { findings, superseded } = await desk.bench.noteFinding({
    by,
    jobId,
    check: 'compression',
    found: 'wants-work',
    figures: low('54'),
    supersedes: first?.id ?? null,
  });
  expect(findings.map(({ check }) => check)).toEqual(['spark', 'compression']);
  expect(findings[1]?.figures[0]?.text).toBe('54');
  expect(superseded).toEqual([first]);
});

test('a second finding on one check is refused, but for what else was seen', async () => {
  const { desk, by } = shop;
  const before = shop.contents();
  const again = desk.bench.noteFinding({ by, jobId, check: 'spark', found: 'wants-work' });
  await expect(again).rejects.toMatchObject({ code: 'SUPERSEDED_ALREADY' });
  const { superseded } = await desk.bench.diagnosis({ jobId });
  const late = desk.bench.noteFinding({
    by,
    jobId,
    check: 'compression',
    found: 'sound',
    supersedes: superseded[0]?.id ?? null,
  });
  await expect(late).rejects.toMatchObject({ code: 'SUPERSEDED_ALREADY' });
  expect(shop.contents()).toBe(before);
  for (const words of ['Muffler loose', 'Fins full of grass'])
    await desk.bench.noteFinding({ by, jobId, check: 'other', found: 'wants-work', words });
  const { findings } = await desk.bench.diagnosis({ jobId });
  expect(findings.filter(({ check }) => check === 'other')).toHaveLength(2);
});

test('a figure that can’t be is refused at its field, and nothing is written', async () => {
  const { desk, by } = shop;
  const before = shop.contents();
  const bad = desk.bench.noteFinding({
    by,
    jobId,
    check: 'leak-down',
    found: 'wants-work',
    figures: [{ cylinder: 1, text: '140', unit: '%', path: 'exhaust' }],
  });
  await expect(bad).rejects.toMatchObject({
    code: 'BAD_INPUT',
    data: { issues: [{ path: 'figures.0.text', message: 'A leak is 0 to 100 per cent.' }] },
  });
  expect(shop.contents()).toBe(before);
});
