import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beyondEstimate, isSameWork, type WantedLine, waitsForApproval } from './bill-ahead.ts';

const part = (partId: string, quantity = 1_000): WantedLine => ({
  kind: 'part',
  description: partId,
  partId,
  quantity,
  unit: 'pc',
});
const hours = (description: string, quantity: number, unit = 'h'): WantedLine => ({
  kind: 'labour',
  description,
  partId: null,
  quantity,
  unit,
});
const NOTHING = { found: [], decided: [], issued: [], clocked: 0, hours: [], coreOf: () => null };

describe('parts', () => {
  test('decided on and then issued count once', () => {
    const beyond = beyondEstimate([part('rings')], {
      ...NOTHING,
      decided: [{ line: part('piston'), priceToSet: false }],
      issued: [part('piston'), part('rings')],
    });
    expect(beyond).toEqual([
      { line: part('piston'), because: 'decided', priceToSet: false, held: 0 },
    ]);
  });

  test('count as far as the estimate holds fewer', () => {
    const [more] = beyondEstimate([part('plug')], { ...NOTHING, issued: [part('plug', 3_000)] });
    expect(more).toMatchObject({ because: 'issued', line: { quantity: 2_000 }, held: 1_000 });
  });

  test('bring their core charge along, for as many as come to the bill', () => {
    const core = (quantity: number): WantedLine => ({
      kind: 'core-charge',
      description: 'Core charge, starter',
      partId: null,
      quantity,
      unit: 'pc',
    });
    const coreOf = ({ partId, quantity }: WantedLine) =>
      partId === 'starter' ? core(quantity) : null;
    const beyond = (estimated: WantedLine[], issued: number) =>
      beyondEstimate(estimated, {
        ...NOTHING,
        issued: [part('starter', issued), part('plug')],
        coreOf,
      }).map(({ line, because, held }) => [line.kind, line.quantity, because, held]);
    expect(beyond([], 2_000)).toEqual([
      ['part', 2_000, 'issued', 0],
      ['core-charge', 2_000, 'issued', 0],
      ['part', 1_000, 'issued', 0],
    ]);
    const estimated = [part('starter'), core(1_000), part('plug')];
    expect(beyond(estimated, 1_000)).toEqual([]);
    expect(beyond(estimated, 3_000)).toEqual([
      ['part', 2_000, 'issued', 1_000],
      ['core-charge', 2_000, 'issued', 1_000],
    ]);
  });

  test('a core charge or credit names the part and is none', () => {
    const core = (kind: string): WantedLine => ({ ...part('crankshaft'), kind });
    const [more] = beyondEstimate([part('crankshaft'), core('core-charge'), core('core-credit')], {
      ...NOTHING,
      issued: [part('crankshaft', 3_000)],
    });
    expect(more).toMatchObject({ because: 'issued', line: { quantity: 2_000 } });
  });

  const piece = fc.record({
    id: fc.constantFrom('piston', 'rings', 'plug'),
    quantity: fc.integer({ min: 1, max: 9_000 }),
  });
  const lines = fc
    .array(piece, { maxLength: 6 })
    .map((list) => list.map(({ id, quantity }) => part(id, quantity)));
  const total = (all: readonly WantedLine[], id: string) =>
    all.filter(({ partId }) => partId === id).reduce((sum, { quantity }) => sum + quantity, 0);

  test('of each the bill holds the most that was estimated, decided or issued, and no more', () => {
    fc.assert(
      fc.property(lines, lines, lines, (estimated, decided, issued) => {
        // A shelf tells of a part once, and so do the proposals.
        const once = (all: readonly WantedLine[]) =>
          ['piston', 'rings', 'plug'].flatMap((id) =>
            total(all, id) > 0 ? [part(id, total(all, id))] : [],
          );
        const beyond = beyondEstimate(estimated, {
          ...NOTHING,
          decided: once(decided).map((line) => ({ line, priceToSet: false })),
          issued: once(issued),
        });
        const billed = [...estimated, ...beyond.map(({ line }) => line)];
        for (const id of ['piston', 'rings', 'plug'])
          expect(total(billed, id)).toBe(
            Math.max(total(estimated, id), total(decided, id), total(issued, id)),
          );
      }),
    );
  });
});

describe('clocked time', () => {
  test('beyond a line with a discount keeps a share off its price, and no amount twice', () => {
    const beyond = (discount: WantedLine['discount']) =>
      beyondEstimate([{ ...hours('Build', 2_000), discount }], { ...NOTHING, clocked: 3_000 });
    const share = { by: 'share' as const, ppm: 100_000 };
    expect(beyond(share)).toMatchObject([{ line: { quantity: 1_000, discount: share } }]);
    expect(beyond({ by: 'amount', amount: 6_000 })).toMatchObject([
      { line: { quantity: 1_000, discount: null } },
    ]);
  });

  test('counts beyond the hours estimated and decided, at the line with most of them', () => {
    const estimated = [hours('Strip', 1_000), hours('Build', 3_000)];
    const decided = [{ line: hours('Hone cylinder', 1_000), priceToSet: false }];
    expect(beyondEstimate(estimated, { ...NOTHING, clocked: 4_000 })).toEqual([]);
    expect(beyondEstimate(estimated, { ...NOTHING, decided, clocked: 5_500 })).toMatchObject([
      { because: 'decided' },
      { because: 'clocked', line: { description: 'Build', quantity: 500 } },
    ]);
  });

  test('counts at the shop’s rates where those are what will be charged', () => {
    const shop = { clocked: 4_000, hours: [hours('Bench', 1_000), hours('Machining', 3_000)] };
    const beyond = (decided: WantedLine[]) =>
      beyondEstimate([], {
        ...NOTHING,
        ...shop,
        decided: decided.map((line) => ({ line, priceToSet: false })),
      }).flatMap(({ because, line }) =>
        because === 'clocked' ? [[line.description, line.quantity]] : [],
      );
    expect(beyond([])).toEqual([
      ['Machining', 3_000],
      ['Bench', 1_000],
    ]);
    expect(beyond([hours('Hone cylinder', 1_500)])).toEqual([['Machining', 2_500]]);
    expect(beyond([hours('Hone cylinder', 1_000, 'job')])).toEqual([]);
    // What is estimated has its own price.
    expect(beyondEstimate([hours('Build', 3_000)], { ...NOTHING, ...shop })).toMatchObject([
      { line: { description: 'Build', quantity: 1_000 }, held: 3_000 },
    ]);
  });

  test('says nothing where labour is flat, or there is none', () => {
    const flat = [hours('Build', 3_000), hours('Valve job', 1_000, 'job')];
    expect(beyondEstimate(flat, { ...NOTHING, clocked: 9_000 })).toEqual([]);
    expect(beyondEstimate([part('piston')], { ...NOTHING, clocked: 9_000 })).toEqual([]);
  });
});

test('work waits past the limit, not at it; never for what nobody was asked or what is billed', () => {
  const at = { total: 50_000, limit: 50_000, asked: true, billed: false };
  expect(waitsForApproval(at)).toBe(false);
  expect(waitsForApproval({ ...at, total: 50_001 })).toBe(true);
  expect(waitsForApproval({ ...at, total: 50_001, asked: false })).toBe(false);
  expect(waitsForApproval({ ...at, total: 50_001, billed: true })).toBe(false);
});

test('work is the same by its part or its words, and a core only as itself', () => {
  const typed = { ...part('piston'), description: 'Piston, as typed' };
  expect(isSameWork(typed, part('piston'))).toBe(true);
  expect(isSameWork(hours('Build', 1), hours('Build', 2))).toBe(true);
  const core = { ...part('piston'), kind: 'core-charge' };
  expect(isSameWork(core, part('piston'))).toBe(false);
  expect(isSameWork(part('piston'), core)).toBe(false);
  expect(isSameWork(core, core)).toBe(true);
  expect(isSameWork(core, { ...core, kind: 'core-credit' })).toBe(false);
});
