import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { ORPCError } from '@orpc/server';
import { afterAll, describe, expect, test } from 'vitest';
import { callProcedure } from '../../electron/command/call-procedure.ts';
import { listProcedures, procedureNames } from '../../electron/command/list-procedures.ts';
import { refusalFrom } from '../../electron/command/refusal.ts';
import { openDesk } from '../../electron/launch/desk-session.ts';
import { contract } from '../../shared/contract/index.ts';
import { openTestShop } from '../desk/shop.ts';

const root = resolve(import.meta.dirname, '..', '..');
const folder = mkdtempSync(join(tmpdir(), 'tappet-command-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function desk(...args: string[]) {
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    [join(root, 'electron', 'command', 'desk.ts'), ...args],
    // The whole contract as JSON Schema is longer than what is taken without this.
    { encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 },
  );
  return { stdout, stderr, status };
}

describe('LIST', () => {
  test('names every procedure of the six rooms, with its schemas and its errors', () => {
    const listed = listProcedures();
    expect(Object.keys(listed)).toEqual(procedureNames());
    expect(new Set(procedureNames().map((name) => name.split('.')[0]))).toEqual(
      new Set(Object.keys(contract)),
    );
    for (const { input, output, errors } of Object.values(listed)) {
      expect(input).toMatchObject({ $schema: expect.stringContaining('json-schema.org') });
      expect(output).toMatchObject({ $schema: expect.stringContaining('json-schema.org') });
      expect(errors.BAD_INPUT).toMatchObject({ status: 422, message: expect.any(String) });
    }
  });

  test('is one JSON object on the standard output, and nothing else', () => {
    const { stdout, stderr, status } = desk('LIST');
    expect({ stderr, status }).toEqual({ stderr: '', status: 0 });
    expect(Object.keys(JSON.parse(stdout))).toEqual(procedureNames());
  });
});

describe('a call', () => {
  test('prints the answer as JSON', () => {
    const { stdout, stderr, status } = desk('--data', folder, 'office.about', '{}');
    expect({ stderr, status }).toEqual({ stderr: '', status: 0 });
    expect(JSON.parse(stdout)).toMatchObject({ program: 'Tappet', dataFolder: folder });
  });

  test('that is refused prints why on stderr and exits 1', () => {
    const { stdout, stderr, status } = desk('--data', folder, 'office.about', '{"more":1}');
    expect({ stdout, status }).toEqual({ stdout: '', status: 1 });
    expect(JSON.parse(stderr)).toEqual({
      error: {
        code: 'BAD_INPUT',
        message: expect.any(String),
        issues: [{ path: expect.any(String), message: expect.any(String) }],
      },
    });
  });

  test.each([
    [['--data', folder, 'office.secrets'], 'NO_SUCH_PROCEDURE'],
    [['--data', folder, 'office'], 'NO_SUCH_PROCEDURE'],
    [['--data', folder, 'constructor.name'], 'NO_SUCH_PROCEDURE'],
    [['--data', folder, 'office.about', '{'], 'BAD_COMMAND'],
    [['office.about', '{}'], 'BAD_COMMAND'],
    [['--data', import.meta.filename, 'office.about', '{}'], 'NO_ACCESS'],
  ])('%j is refused in the same shape', (args, code) => {
    const { stdout, stderr, status } = desk(...args);
    expect({ stdout, status }).toEqual({ stdout: '', status: 1 });
    expect(JSON.parse(stderr).error).toEqual({ code, message: expect.any(String) });
  });
});

test('a shop is brought back by one command, on a machine where there is none', async () => {
  const shop = await openTestShop();
  const { backUp } = await shop.desk.office.backUp({ by: shop.by });
  const fileName = backUp?.fileName ?? '';
  const machine = join(folder, 'new machine');
  mkdirSync(join(machine, 'backups'), { recursive: true });
  copyFileSync(join(shop.folder, 'backups', fileName), join(machine, 'backups', fileName));
  const order = {
    by: shop.by,
    from: { fileName },
    sha256: backUp?.sha256,
    storeEntries: 0,
    reason: 'The laptop died',
  };
  const { stdout, stderr, status } = desk(
    ...['--data', machine, 'office.bringBack', JSON.stringify(order)],
  );
  expect({ stderr, status }).toEqual({ stderr: '', status: 0 });
  expect(JSON.parse(stdout)).toMatchObject({ kind: 'bring-back', state: 'done' });
  const session = openDesk(machine, '0.0.0');
  expect(await callProcedure(session, 'office.staff', {})).toEqual(
    await shop.desk.office.staff({}),
  );
  await session.close();
  shop.close();
}, 60_000);

test('papers that can be put nowhere are refused before the work is done', () => {
  const demo = join(root, 'electron', 'command', 'demo.ts');
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    [demo, '--out', import.meta.filename],
    { encoding: 'utf8' },
  );
  expect({ stdout, status }).toEqual({ stdout: '', status: 1 });
  expect(stderr).toMatch(/^The papers can't be put into .+\. Choose another folder with --out\./);
});

test('a refusal carries issues only when there are any', () => {
  const issues = [{ path: 'customer.name', message: 'This must not be empty.' }];
  expect(refusalFrom(new ORPCError('BAD_INPUT', { message: 'No.', data: { issues } }))).toEqual({
    code: 'BAD_INPUT',
    message: 'No.',
    issues,
  });
  expect(
    refusalFrom(new ORPCError('NOT_FOUND', { message: 'No.', data: { what: 'job' } })),
  ).toEqual({ code: 'NOT_FOUND', message: 'No.' });
  expect(refusalFrom(new Error('oh')).code).toBe('FAULT');
});
