import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '..', '..');

const refused = [
  ['expect(await desk.counter.jobs({})).toEqual([]);', 'reads once'],
  ['expect((await desk.office.shop({})).phone).toBe(phone);', 'reads once'],
  ['expect((await pad.boundingBox())?.height).toBeGreaterThan(64);', 'reads once'],
  ['expect({ jobs: await desk.counter.jobs({}) }).toEqual({ jobs: [] });', 'reads once'],
  ['if (await page.getByRole("alert").isVisible()) await page.reload();', 'looks once'],
  ['const code = await page.getByText(/^J/).textContent();', 'textOf()'],
  ['const rows = await page.locator("tr").allInnerTexts();', 'textsOf()'],
  ['await page.waitForTimeout(200);', 'waits for a time'],
  ['setTimeout(done, 200);', 'waits for a time'],
  ['await page.waitForLoadState("networkidle");', 'waits for a time'],
  ['const tag = String(Date.now());', 'toldNow()'],
  ['const today = new Date();', 'toldNow()'],
  ['await page.clock.install();', 'told time already'],
] as const;

const allowed = [
  'await expect.poll(() => desk.counter.jobs({})).toEqual([]);',
  'await expect.poll(async () => (await desk.office.shop({})).phone).toBe(phone);',
  'await expect(async () => { await page.keyboard.press("g"); }).toPass();',
  'await expect(page.getByRole("alert")).toBeVisible();',
  'const code = await textOf(page.getByText(/^J/), /^J[0-9]+$/);',
  'const leapDay = new Date(2028, 1, 29);',
] as const;

type Report = {
  diagnostics: { category: string; message: string; location: { path: string } }[];
};

const lines: readonly string[] = [...refused.map(([line]) => line), ...allowed];
const fileOf = (line: string): string => `tests/browser/line-${lines.indexOf(line)}.spec.ts`;

let tree: string;
let report: Report;

beforeAll(() => {
  tree = mkdtempSync(join(tmpdir(), 'tappet-waits-rule-'));
  mkdirSync(join(tree, 'tests', 'browser'), { recursive: true });
  for (const name of ['biome.json', '.gitignore', 'tests/browser/waits.grit'])
    cpSync(join(root, name), join(tree, name));
  for (const line of lines) writeFileSync(join(tree, fileOf(line)), `${line}\n`);
  const { stdout } = spawnSync(
    join(root, 'node_modules', '.bin', 'biome'),
    ['lint', '--reporter=json', '--max-diagnostics=none', '.'],
    { cwd: tree, encoding: 'utf8', shell: process.platform === 'win32' },
  );
  report = JSON.parse(stdout) as Report;
}, 30_000);
afterAll(() => rmSync(tree, { recursive: true, force: true }));

const saidOf = (line: string): string[] =>
  report.diagnostics
    .filter(
      ({ category, location }) => category === 'plugin' && location.path.endsWith(fileOf(line)),
    )
    .map(({ message }) => message);

describe('a browser test waits for what it reads', () => {
  test.each(refused)('it may not: %s', (line, advice) => {
    expect(saidOf(line).join('\n')).toContain(advice);
  });

  test.each(allowed)('it may: %s', (line) => {
    expect(saidOf(line)).toEqual([]);
  });
});
