import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { fingerprint } from '../../electron/launch/fingerprint.ts';
import { ensureInstalled, isInstalled } from '../../electron/launch/install.mjs';

let root: string;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'tappet-install-'));
  writeFileSync(join(root, 'package-lock.json'), '{"version":1}');
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

function pretendInstalled(): void {
  mkdirSync(join(root, 'node_modules', 'node', 'bin'), { recursive: true });
  writeFileSync(join(root, 'node_modules', 'node', 'bin', 'node'), '');
}

test('a fresh clone is not installed', () => {
  expect(isInstalled(root, 'linux')).toBe(false);
});

test('what npm installed after the lock was written will do, and is remembered', () => {
  pretendInstalled();
  expect(isInstalled(root, 'linux')).toBe(false);
  writeFileSync(join(root, 'node_modules', '.package-lock.json'), '{}');
  utimesSync(join(root, 'package-lock.json'), 1, 1);
  expect(isInstalled(root, 'linux')).toBe(true);
  expect(ensureInstalled(root)).toBe(true);
  // From here on the content decides, whatever the dates say.
  utimesSync(join(root, 'node_modules', '.package-lock.json'), 0, 0);
  expect(isInstalled(root, 'linux')).toBe(true);
  writeFileSync(join(root, 'package-lock.json'), '{"version":2}');
  expect(isInstalled(root, 'linux')).toBe(false);
});

/** Installs with a stand-in for npm, and gives what somebody at a terminal sees. */
function installWith(npm: string, env: Record<string, string> = {}) {
  const standIn = join(root, 'npm.cjs');
  writeFileSync(standIn, npm);
  const module = pathToFileURL(resolve('electron', 'launch', 'install.mjs')).href;
  const { stdout, stderr } = spawnSync(
    process.execPath,
    [
      '--input-type=module',
      '--eval',
      `import { ensureInstalled } from ${JSON.stringify(module)}; console.log(ensureInstalled(${JSON.stringify(root)}));`,
    ],
    {
      encoding: 'utf8',
      env: {
        ...process.env,
        npm_config_loglevel: '',
        npm_execpath: standIn,
        npm_node_execpath: process.execPath,
        ...env,
      },
    },
  );
  return { installed: stdout.trim(), seen: stderr.trim().split('\n') };
}

const INSTALLS = `
  const { mkdirSync, writeFileSync } = require('node:fs');
  mkdirSync('node_modules/node/bin', { recursive: true });
  for (const name of ['node', 'node.exe']) writeFileSync('node_modules/node/bin/' + name, '');
  console.log('added 600 packages');
  if (!process.argv.includes('--loglevel=error')) console.error('npm warn EBADENGINE');
`;
const BEGINS = 'Installing what Tappet needs (npm ci). This takes a minute or two.';

test('a first run shows what it does and no warnings, unless npm is asked for more', () => {
  expect(installWith(INSTALLS)).toEqual({ installed: 'true', seen: [BEGINS, 'Installed.'] });
  rmSync(join(root, 'node_modules'), { recursive: true });
  expect(installWith(INSTALLS, { npm_config_loglevel: 'verbose' }).seen).toContain(
    'npm warn EBADENGINE',
  );
});

test('a first run that fails shows all that npm said of it', () => {
  const fails = `console.log('half way'); console.error('npm error network'); process.exit(1);`;
  expect(installWith(fails)).toEqual({
    installed: 'false',
    seen: [BEGINS, 'npm error network', 'half way'],
  });
});

test('the fingerprint of sources changes with content and with names, not with dates', () => {
  mkdirSync(join(root, 'src'));
  writeFileSync(join(root, 'src', 'a.ts'), 'one');
  const before = fingerprint(root, ['src', 'absent']);
  utimesSync(join(root, 'src', 'a.ts'), 1, 1);
  expect(fingerprint(root, ['src', 'absent'])).toBe(before);
  writeFileSync(join(root, 'src', 'b.ts'), '');
  const withName = fingerprint(root, ['src', 'absent']);
  writeFileSync(join(root, 'src', 'a.ts'), 'two');
  expect(new Set([before, withName, fingerprint(root, ['src', 'absent'])]).size).toBe(3);
});
