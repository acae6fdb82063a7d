import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

let shop: PartsShop;
beforeAll(async () => {
  shop = await openPartsShop();
});
afterAll(() => shop.close());

test('a supplier is kept under its name, which case and accents don’t double', async () => {
  const { desk, by } = shop;
  const added = await desk.parts.addSupplier({ by, name: 'Séchet Supply', leadDays: 9 });
  expect(added).toMatchObject({ name: 'Séchet Supply', leadDays: 9, freeCarriageFrom: null });
  await desk.parts.addSupplier({ by, name: 'Ardent Wholesale', carriage: 950 });
  const names = (await desk.parts.suppliers({})).map(({ name }) => name);
  expect(names).toEqual(['Ardent Wholesale', 'Séchet Supply']);
  await expect(desk.parts.addSupplier({ by, name: 'SECHET  supply' })).rejects.toMatchObject({
    code: 'SUPPLIER_NAME_TAKEN',
    data: { supplierId: added.id },
  });
});

test('a supplier’s new name goes to the parts that named the old one', async () => {
  const { desk, by } = shop;
  const { id } = await desk.parts.addSupplier({ by, name: 'Tolver Parts' });
  const part = await desk.parts.add({
    by,
    number: 'TP-1',
    description: 'Gasket',
    price: 100,
    supplier: 'tolver parts',
  });
  await desk.parts.addNumber({
    by,
    partId: part.id,
    kind: 'supplier',
    whose: 'TOLVER Parts',
    number: '77-1',
  });
  await desk.parts.reviseSupplier({
    by,
    supplierId: id,
    name: 'Tolver & Sons',
    minimumOrder: 5000,
  });
  const { part: after, numbers } = await desk.parts.part({ id: part.id });
  expect(numbers).toMatchObject([{ whose: 'Tolver & Sons', number: '77-1' }]);
  expect(after.supplier).toBe('Tolver & Sons');
  expect(await desk.parts.find({ text: 'sons' })).toHaveLength(1);
  const [sons] = (await desk.parts.suppliers({})).filter((one) => one.id === id);
  expect(sons).toMatchObject({ name: 'Tolver & Sons', minimumOrder: 5000, leadDays: 7 });
});
