import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { StoreRefusal } from '../../db/store.ts';
import { openDesk, openDeskFor } from '../../electron/launch/desk-session.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tappet-session-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test('a shop that is there is opened as it is, and what a stopped start left is cleared away', async () => {
  await openDesk(folder, '1').close();
  const ours = `filling-${process.pid}-a`;
  for (const name of [`filling-${2 ** 30}-b`, ours]) {
    mkdirSync(join(folder, name));
    writeFileSync(join(folder, name, 'tappet.db'), 'half a shop');
  }
  const session = await openDeskFor({ folder, demo: true }, '1');
  await session.close();
  expect(readdirSync(folder).sort()).toEqual([ours, 'tappet.db']);
});

test('a folder that can’t be had is refused in a sentence, for the invented shop as well', async () => {
  const file = join(folder, 'file');
  writeFileSync(file, 'no folder');
  for (const demo of [true, false]) {
    for (const place of [file, join(file, 'within')]) {
      await expect(openDeskFor({ folder: place, demo }, '1')).rejects.toThrow(StoreRefusal);
    }
  }
});
