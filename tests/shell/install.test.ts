import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
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
