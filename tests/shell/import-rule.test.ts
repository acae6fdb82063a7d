import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '..', '..');

const refused = [
  [
    'renderer/bench',
    "import { a } from '../../electron/desk/index.ts';",
    'renderer/common/connection/',
  ],
  ['renderer/bench', "import type { A } from '../../db/store.ts';", 'renderer/common/connection/'],
  ['renderer/bench', "import { readFileSync } from 'node:fs';", 'renderer/common/connection/'],
  ['renderer/bench', "import { app } from 'electron';", 'renderer/common/connection/'],
  ['shared/trade', "import { a } from '../../db/store.ts';", 'up into db/'],
  ['shared/trade', "export { a } from '../../electron/desk/index.ts';", 'up into db/'],
  ['shared/trade', "import { readFile } from 'node:fs/promises';", 'belongs to db/'],
  ['shared/trade', "import { useState } from 'react';", 'to renderer/'],
  ['db/queries', "import { a } from '../../electron/desk/index.ts';", 'electron/desk/'],
  ['db/queries', "const a = await import('../../renderer/x.ts');", 'electron/desk/'],
  ['electron/desk', "import { a } from '../serve/http-server.ts';", 'DeskContext'],
  ['electron/desk', "import { app } from 'electron';", 'electron/window/'],
  ['electron/paper', "import { a } from '../../db/store.ts';", 'Let electron/desk/'],
  ['electron/paper', "import { a } from '../desk/index.ts';", 'Let electron/desk/'],
  ['electron/paper', "import Database from 'better-sqlite3';", 'Let electron/desk/'],
  ['electron/paper', "import { a } from '../../tests/run/step.ts';", 'nothing of tests/'],
  ['electron/serve', "import { app } from 'electron';", 'electron/window/'],
  ['electron/serve', "import { app } from 'electron/main';", 'electron/window/'],
  ['electron/desk', "import { app } from 'electron/main';", 'electron/window/'],
  ['electron/desk', "import { a } from '../../tests/desk/shop.ts';", 'nothing of tests/'],
  ['renderer/bench', "import { ipcRenderer } from 'electron/renderer';", 'common/connection/'],
  ['renderer/bench', "import { a } from '../../tests/desk/shop.ts';", 'nothing of tests/'],
  ['electron/launch', "import { a } from '../../renderer/x.ts';", 'shared/'],
  ['electron/window', "import { a } from '../../renderer/x.ts';", 'shared/'],
] as const;

const allowed = [
  ['renderer/bench', "import { a } from '../../shared/trade/index.ts';"],
  ['shared/contract', "import { z } from 'zod';"],
  ['db/queries', "import { a } from '../../shared/money/index.ts';"],
  ['electron/desk', "import { a } from '../paper/index.ts';"],
  ['electron/desk', "import { a } from '../../db/store.ts';"],
  ['electron/paper', "import { a } from '../../shared/trade/index.ts';"],
  ['electron/window', "import { BrowserWindow } from 'electron';"],
  ['tests/shell', "import { a } from '../../electron/desk/index.ts';"],
] as const;

/** One file for each line, under the folder that the rule goes by, in a tree of its own. */
const fileOf = (folder: string, line: string): string =>
  `${folder}/line-${Buffer.from(line).toString('hex').slice(-24)}.ts`;

type Report = {
  diagnostics: { category: string; message: string; location: { path: string } }[];
};

let tree: string;
let report: Report;

beforeAll(() => {
  tree = mkdtempSync(join(tmpdir(), 'tappet-import-rule-'));
  for (const name of ['biome.json', '.gitignore', 'tests/browser/waits.grit'])
    cpSync(join(root, name), join(tree, name));
  for (const [folder, line] of [...refused, ...allowed]) {
    const file = join(tree, fileOf(folder, line));
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, `${line}\n`);
  }
  const { stdout } = spawnSync(
    join(root, 'node_modules', '.bin', 'biome'),
    ['lint', '--only=style/noRestrictedImports', '--reporter=json', '--max-diagnostics=none', '.'],
    { cwd: tree, encoding: 'utf8', shell: process.platform === 'win32' },
  );
  report = JSON.parse(stdout) as Report;
}, 30_000);
afterAll(() => rmSync(tree, { recursive: true, force: true }));

function saidOf(folder: string, line: string): string[] {
  return report.diagnostics
    .filter(({ location }) => location.path.endsWith(fileOf(folder, line)))
    .map(({ message }) => message);
}

describe('who may import whom', () => {
  test.each(refused)('%s may not: %s', (folder, line, advice) => {
    // The message says where to go instead.
    expect(saidOf(folder, line)).toEqual([expect.stringContaining(advice)]);
  });

  test.each(allowed)('%s may: %s', (folder, line) => {
    expect(saidOf(folder, line)).toEqual([]);
  });
});
