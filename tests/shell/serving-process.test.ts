import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '..', '..');
const serveModule = join(root, 'electron', 'serve', 'serve.ts');

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tappet-process-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Serving without building first: only the desk is asked here. */
const script = `
  import { serveUntilStopped } from ${JSON.stringify(serveModule)};
  await serveUntilStopped({ folder: process.env.FOLDER, demo: false, port: 0 });
`;

function serve(command: string, args: string[], environment = {}): ChildProcess {
  return spawn(command, args, {
    cwd: root,
    env: { ...process.env, FOLDER: folder, ...environment },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
}

function said(child: ChildProcess, pattern: RegExp): Promise<string> {
  return new Promise((found, failed) => {
    let text = '';
    child.stdout?.on('data', (chunk: Buffer) => {
      text += chunk.toString();
      const match = pattern.exec(text)?.[1];
      if (match) found(match);
    });
    child.on('exit', () => failed(new Error(`It ended: ${text}`)));
  });
}

async function isServed(address: string): Promise<boolean> {
  return fetch(address).then(
    () => true,
    () => false,
  );
}

const inline = ['--input-type=module', '--eval', script];

test('one server for each folder; a second start gets another key; SIGTERM closes all of it', async () => {
  const first = serve(process.execPath, inline);
  const address = await said(first, /^Tappet is at (\S+)$/m);
  expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/\?key=[\w-]{43}$/);

  const second = serve(process.execPath, inline);
  const another = await said(second, /^Tappet is at (\S+)$/m);
  expect(new URL(another).origin).toBe(new URL(address).origin);
  expect(another).not.toBe(address);
  expect((await fetch(another, { redirect: 'manual' })).status).toBe(303);

  const ended = new Promise((resolve) => first.once('exit', resolve));
  first.kill('SIGTERM');
  expect(await ended).toBe(0);
  expect(await isServed(new URL(address).origin)).toBe(false);
  expect(existsSync(join(folder, 'station.json'))).toBe(false);
  // Closed in good order, SQLite leaves no log behind.
  expect(existsSync(join(folder, 'tappet.db-wal'))).toBe(false);
}, 40_000);

test('under npm, the server ends when npm is gone, though its shell passes no signal on', async () => {
  const shell = serve('sh', ['-c', `"${process.execPath}" ${inline[0]} --eval "$SCRIPT"; true`], {
    SCRIPT: script,
    npm_lifecycle_event: 'start',
  });
  const address = await said(shell, /^Tappet is at (\S+)$/m);
  shell.kill('SIGKILL');
  const { origin } = new URL(address);
  for (let tries = 0; tries < 100 && (await isServed(origin)); tries += 1) {
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  expect(await isServed(origin)).toBe(false);
}, 40_000);
