import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { pageFile, safeRelativePath } from '../../electron/serve/page-files.ts';
import { contentSecurityPolicy } from '../../electron/serve/security-headers.ts';
import { createPageResponder, isOwnPage } from '../../electron/window/scheme.ts';

let folder: string;
let page: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tappet-page-'));
  page = join(folder, 'renderer');
  mkdirSync(join(page, 'assets'), { recursive: true });
  writeFileSync(join(page, 'index.html'), '<title>Tappet</title>');
  writeFileSync(join(page, 'assets', 'main-1a.js'), 'export {};');
  writeFileSync(join(page, '.secret.js'), 'hidden');
  writeFileSync(join(folder, 'outside.js'), 'outside');
  symlinkSync(join(folder, 'outside.js'), join(page, 'assets', 'link.js'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const leavingPaths = [
  '/../outside.js',
  '/assets/../../outside.js',
  '/%2e%2e/outside.js',
  '/%2e%2e%2foutside.js',
  '/..%5coutside.js',
  '/assets/..\\..\\outside.js',
  '/C:/outside.js',
  '/outside.js%00.html',
  '/%',
  '/.secret.js',
  '/assets/link.js',
  'outside.js',
];

describe('built files', () => {
  test.each(leavingPaths)('%s is not given out', async (path) => {
    expect(await pageFile(page, path)).toBeUndefined();
  });

  test('every screen is the one page, asked for anew', async () => {
    for (const path of ['/', '/bench', '/counter/jobs/17']) {
      expect(await pageFile(page, path)).toMatchObject({
        type: 'text/html; charset=utf-8',
        cache: 'no-store',
      });
    }
  });

  test('a file whose name carries its hash may be kept; one that is not there is not the page', async () => {
    expect(await pageFile(page, '/assets/main-1a.js')).toMatchObject({
      type: 'text/javascript; charset=utf-8',
      cache: 'public, max-age=31536000, immutable',
    });
    expect(await pageFile(page, '/assets/main-2b.js')).toBeUndefined();
  });

  test('slashes more than needed do no harm', () => {
    expect(safeRelativePath('//assets///main-1a.js')).toBe('assets/main-1a.js');
  });
});

describe('our own scheme', () => {
  test('answers with the page and its policy', async () => {
    const response = await createPageResponder(page)({ method: 'GET', url: 'tappet://desk/' });
    expect(response.status).toBe(200);
    expect(response.headers.get('content-security-policy')).toBe(contentSecurityPolicy);
    expect(response.headers.get('x-content-type-options')).toBe('nosniff');
    expect(await response.text()).toContain('Tappet');
  });

  test.each([
    ...leavingPaths.filter((path) => path.startsWith('/')).map((path) => `tappet://desk${path}`),
    'tappet://other/index.html',
    'tappet:index.html',
    'file:///etc/hostname',
  ])('%s is not found', async (url) => {
    const response = await createPageResponder(page)({ method: 'GET', url });
    expect(response.status).toBe(404);
    expect(await response.text()).not.toContain('outside');
  });

  test('only reading is answered', async () => {
    const respond = createPageResponder(page);
    expect((await respond({ method: 'POST', url: 'tappet://desk/' })).status).toBe(404);
  });

  test.each([
    ['tappet://desk/', true],
    ['tappet://desk/bench?x=1#y', true],
    ['tappet://desk.example/', false],
    ['tappet://desk@example/', false],
    ['tappet://example/desk/', false],
    ['https://desk/', false],
    ['about:blank', false],
    ['', false],
  ])('%s is our page: %s', (address, expected) => {
    expect(isOwnPage(address)).toBe(expected);
  });
});

test('the policy allows no script but from files of our own', () => {
  const rules = new Map(
    contentSecurityPolicy.split('; ').map((rule) => {
      const [name = '', ...sources] = rule.split(' ');
      return [name, sources] as const;
    }),
  );
  expect(rules.get('default-src')).toEqual(["'none'"]);
  expect(rules.get('script-src')).toEqual(["'self'"]);
  expect(rules.get('connect-src')).toEqual(["'self'"]);
  expect(rules.get('frame-ancestors')).toEqual(["'none'"]);
  expect(rules.get('base-uri')).toEqual(["'none'"]);
});
