import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildMain } from '../../electron/launch/build-main.ts';

const root = resolve(import.meta.dirname, '..', '..');
// As deep below the root as the real one, since the bundle finds its files from there.
const bundle = join(root, 'dist', `bundle-${process.pid}`);
const data = mkdtempSync(join(tmpdir(), 'tappet-bundle-'));

beforeAll(() => buildMain(root, bundle), 60_000);
afterAll(() => {
  rmSync(bundle, { recursive: true, force: true });
  rmSync(data, { recursive: true, force: true });
});

test('what Electron is given to run opens a store, with its migrations, and one window', () => {
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    [join(import.meta.dirname, 'run-bundle.ts'), join(bundle, 'main.js'), '--data', data],
    { encoding: 'utf8', timeout: 60_000 },
  );
  expect({ stderr, status }).toEqual({ stderr: '', status: 0 });
  const told = JSON.parse(stdout) as { windows: { loaded: string[] }[]; status: number };
  expect(told.windows.map(({ loaded }) => loaded)).toEqual([['tappet://desk/']]);
  expect(told.status).toBe(404);
  expect(existsSync(join(data, 'tappet.db'))).toBe(true);
}, 90_000);

test('the preload is one file that asks for nothing but electron, as the sandbox wants it', () => {
  const preload = readFileSync(join(bundle, 'preload.cjs'), 'utf8');
  const asked = [...preload.matchAll(/require\("([^"]+)"\)/g)].map(([, name]) => name);
  expect(asked).toEqual(['electron']);
});

test('every library that the bundle asks for is one that the installer takes along', () => {
  const main = readFileSync(join(bundle, 'main.js'), 'utf8');
  const asked = [...main.matchAll(/^import [^"]*"([^"]+)"/gm)]
    .map(([, name = '']) => name)
    .filter((name) => !name.startsWith('node:') && name !== 'electron')
    .map((name) =>
      name
        .split('/')
        .slice(0, name.startsWith('@') ? 2 : 1)
        .join('/'),
    );
  expect(asked).toContain('better-sqlite3');
  const { dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    dependencies: Record<string, string>;
  };
  expect([...new Set(asked)].filter((name) => !(name in dependencies))).toEqual([]);
});
