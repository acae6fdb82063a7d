import { createRouterClient } from '@orpc/server';
import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { desk, deskInterceptors } from '../../electron/desk/index.ts';
import { openTestShop, type TestShop } from './shop.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await openTestShop();
});
afterAll(() => shop.close());

/** The shop on a disk that answers every write with this. */
function onDisk(error: Error) {
  const write = (): never => {
    throw error;
  };
  const context = { ...shop.context, store: { ...shop.context.store, write } };
  return createRouterClient(desk, { context, interceptors: deskInterceptors });
}

const sqlite = (code: string) => new Database.SqliteError('as SQLite says', code);

describe('a disk that fails under the store is a declared error', () => {
  test.each([
    [sqlite('SQLITE_FULL'), { code: 'DISK_FULL', status: 507 }],
    [new Error('Failed query', { cause: sqlite('SQLITE_FULL') }), { code: 'DISK_FULL' }],
    [sqlite('SQLITE_IOERR_WRITE'), { code: 'STORE_FAILING', status: 500 }],
    [sqlite('SQLITE_CORRUPT'), { code: 'STORE_FAILING', status: 500 }],
  ])('%o', async (error, refusal) => {
    const added = onDisk(error).counter.addCustomer({ by: shop.by, name: 'Greta' });
    await expect(added).rejects.toMatchObject({ defined: true, ...refusal });
    await expect(added).rejects.toThrow(/nothing of this step was kept\. [A-Z]/);
  });

  test('and a mistake of ours is none', async () => {
    const added = onDisk(new TypeError('a mistake')).counter.addCustomer({
      by: shop.by,
      name: 'Greta',
    });
    await expect(added).rejects.not.toMatchObject({ defined: true });
  });
});

describe('each field at fault is named', () => {
  const issuesOf = async (call: Promise<unknown>) => {
    const refusal: unknown = await call.catch((error: unknown) => error);
    return (refusal as { data: { issues: { path: string; message: string }[] } }).data.issues;
  };
  const job = (input: object) =>
    shop.desk.counter.job(input as Parameters<typeof shop.desk.counter.job>[0]);

  test('where nobody knows it', async () => {
    expect(await issuesOf(job({ code: 'J000001', colour: 'red' }))).toEqual([
      { path: 'colour', message: 'There is no field of this name here.' },
    ]);
  });

  test('in the form that comes nearest, where there are several', async () => {
    expect(await issuesOf(job({ id: 5 }))).toEqual([{ path: 'id', message: 'This must be text.' }]);
    expect(await issuesOf(job({ code: 5 }))).toEqual([
      { path: 'code', message: 'This must be text.' },
    ]);
  });
});
