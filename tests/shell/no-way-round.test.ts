import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '..', '..');

/** Put together here, so that this file does not hold what it looks for. */
const forbidden = [
  ['biome', 'ignore'].join('-'),
  ...['ignore', 'expect-error', 'nocheck'].map((word) => `@ts-${word}`),
  ['eslint', 'disable'].join('-'),
  ['v8', 'ignore'].join(' '),
];
/** Playwright's conditional form, told with its reason, is the one that is allowed. */
const passedOver = /\b(?:test|it|describe)\.(?:skip|only|fixme|todo|fails|skipIf|runIf)\b/;

function sources(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sources(path);
    return /\.(?:tsx?|mjs|css)$/.test(entry.name) ? [path] : [];
  });
}

test('no check is switched off and no test is passed over, anywhere', () => {
  const files = ['electron', 'renderer', 'db', 'shared', 'tests'].flatMap((name) =>
    sources(join(root, name)),
  );
  expect(files.length).toBeGreaterThan(50);
  const found = files.flatMap((file) =>
    readFileSync(file, 'utf8')
      .split('\n')
      .flatMap((line, index) => {
        const bad = forbidden.some((word) => line.includes(word)) || passedOver.test(line);
        return bad ? [`${relative(root, file)}:${index + 1}: ${line.trim()}`] : [];
      }),
  );
  expect(found).toEqual([]);
});
