import { eq } from 'drizzle-orm';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { staffById } from '../../../db/queries/office.ts';
import { remembered } from '../../../db/remembered.ts';
import { staff } from '../../../db/schema/index.ts';
import { openTestShop, type TestShop } from '../shop.ts';

let shop: TestShop;
let asked: number;
const nameOf = remembered((store, id) => {
  asked += 1;
  return staffById(store, id)?.name;
});

beforeEach(async () => {
  shop = await openTestShop();
  asked = 0;
});
afterEach(() => shop.close());

const rename = (name: string) =>
  shop.context.store.write((store) => {
    store.update(staff).set({ name }).where(eq(staff.id, shop.by)).run();
  });

test('asks once as long as nothing is written, and for each key by itself', () => {
  const { read } = shop.context.store;
  expect([nameOf(read, shop.by), nameOf(read, shop.by)]).toEqual(['Ruth Okafor', 'Ruth Okafor']);
  expect(asked).toBe(1);
  expect(nameOf(read, 'nobody')).toBeUndefined();
  expect(nameOf(read, 'nobody')).toBeUndefined();
  expect(asked).toBe(2);
});

test('sees what was written, at once and within the same transaction', () => {
  const { store } = shop.context;
  expect(nameOf(store.read, shop.by)).toBe('Ruth Okafor');
  rename('Ruth Adeyemi');
  expect(nameOf(store.read, shop.by)).toBe('Ruth Adeyemi');
  store.write((within) => {
    expect(nameOf(within, shop.by)).toBe('Ruth Adeyemi');
    within.update(staff).set({ name: 'R. Adeyemi' }).where(eq(staff.id, shop.by)).run();
    expect(nameOf(within, shop.by)).toBe('R. Adeyemi');
  });
  expect(nameOf(store.read, shop.by)).toBe('R. Adeyemi');
});

test('forgets what it read within a transaction that was taken back', () => {
  const { store } = shop.context;
  expect(nameOf(store.read, shop.by)).toBe('Ruth Okafor');
  expect(() =>
    store.write((within) => {
      within.update(staff).set({ name: 'Nobody' }).where(eq(staff.id, shop.by)).run();
      expect(nameOf(within, shop.by)).toBe('Nobody');
      throw new Error('It did not go through.');
    }),
  ).toThrow('It did not go through.');
  expect(nameOf(store.read, shop.by)).toBe('Ruth Okafor');
});
