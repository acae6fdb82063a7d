import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { programRoot } from '../../electron/launch/root.ts';

/** Has an import of its own, as those in tests/shell/ have (vitest.config.ts). */
const onItsOwn = join('tests', 'crash', 'bring-back.test.ts');

test('no module is replaced where test files share what they import', () => {
  const sharing = globSync('{shared,db,electron,renderer,tests}/**/*.test.ts', {
    cwd: programRoot,
    exclude: (path) => path.startsWith(join('tests', 'shell')),
  }).filter((path) => path !== onItsOwn);
  const replacing = sharing.filter((path) =>
    /\bvi\.(mock|doMock|resetModules)\(/.test(readFileSync(join(programRoot, path), 'utf8')),
  );

  expect(sharing.length).toBeGreaterThan(100);
  expect(replacing).toEqual([]);
});
