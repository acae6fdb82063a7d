import { describe, expect, test } from 'vitest';
import { browserCommand, hasDesktop } from '../../electron/serve/browser.ts';
import { createDoor } from '../../electron/serve/door.ts';
import { isOwnHost, isOwnOrigin, requestTarget } from '../../electron/serve/same-machine.ts';
import { sessionCookie, sessionToken } from '../../electron/serve/session-cookie.ts';

describe('keys and sessions', () => {
  test('a key opens once', () => {
    const door = createDoor();
    const key = door.issueKey();
    const token = door.redeemKey(key);
    expect(door.isSession(token)).toBe(true);
    expect(door.redeemKey(key)).toBeUndefined();
  });

  test('nothing else opens', () => {
    const door = createDoor();
    const key = door.issueKey();
    expect(door.redeemKey('')).toBeUndefined();
    expect(door.redeemKey(`${key}x`)).toBeUndefined();
    expect(door.isSession(undefined)).toBe(false);
    expect(door.isSession(key)).toBe(false);
    expect(createDoor().redeemKey(key)).toBeUndefined();
  });

  test('keys carry 256 bits and differ', () => {
    const door = createDoor();
    const keys = Array.from({ length: 100 }, () => door.issueKey());
    expect(new Set(keys).size).toBe(100);
    for (const key of keys) expect(Buffer.from(key, 'base64url')).toHaveLength(32);
  });
});

describe('cookie', () => {
  test('is out of reach of scripts and of other sites, and belongs to one port', () => {
    expect(sessionCookie(4100, 'abc')).toBe('tappet-4100=abc; HttpOnly; SameSite=Strict; Path=/');
    expect(sessionToken(4100, 'tappet-41=no; other=1; tappet-4100=abc')).toBe('abc');
    expect(sessionToken(4200, 'tappet-4100=abc')).toBeUndefined();
    expect(sessionToken(4100, undefined)).toBeUndefined();
  });
});

describe('who calls', () => {
  test.each([
    [['127.0.0.1:4100'], 4100, true],
    [['localhost:4100'], 4100, true],
    [['LOCALHOST:4100'], 4100, true],
    [['127.0.0.1'], 80, true],
    [['localhost:80'], 80, true],
    [['127.0.0.1'], 4100, false],
    [['127.0.0.1:4101'], 4100, false],
    [['shop.example:4100'], 4100, false],
    [['127.0.0.1.shop.example:4100'], 4100, false],
    [['127.0.0.1:4100', 'shop.example'], 4100, false],
    [undefined, 4100, false],
  ])('Host %j at port %i', (host, port, expected) => {
    expect(isOwnHost({ headersDistinct: { host } }, port)).toBe(expected);
  });

  test.each([
    ['/bench?from=1', '/bench'],
    ['//shop.example/bench', '//shop.example/bench'],
    ['//', '//'],
    ['http://shop.example/', undefined],
    ['http://[', undefined],
    ['*', undefined],
    ['shop.example:443', undefined],
    [undefined, undefined],
  ])('request target %s', (url, path) => {
    expect(requestTarget(url)?.pathname).toBe(path);
  });

  test.each([
    [{ origin: 'http://127.0.0.1:4100' }, true],
    [{ origin: 'http://127.0.0.1:4100', 'sec-fetch-site': 'same-origin' }, true],
    [{ origin: 'http://127.0.0.1:4100', 'sec-fetch-site': 'cross-site' }, false],
    [{ origin: 'http://localhost:4100' }, false],
    [{ origin: 'https://127.0.0.1:4100' }, false],
    [{ origin: 'http://shop.example' }, false],
    [{ origin: 'null' }, false],
    [{}, false],
  ])('origin %j', (headers, expected) => {
    expect(isOwnOrigin({ host: '127.0.0.1:4100', ...headers })).toBe(expected);
  });
});

describe('desktop', () => {
  test('a window or a browser is opened only where somebody can see it', () => {
    const linux = { platform: 'linux' } as const;
    expect(hasDesktop({ ...linux, environment: {} })).toBe(false);
    expect(hasDesktop({ ...linux, environment: { DISPLAY: ':0' } })).toBe(true);
    expect(hasDesktop({ ...linux, environment: { WAYLAND_DISPLAY: 'wayland-0' } })).toBe(true);
    expect(hasDesktop({ ...linux, environment: { DISPLAY: ':0', CI: 'true' } })).toBe(false);
    expect(hasDesktop({ platform: 'darwin', environment: {} })).toBe(true);
  });

  test('the address is never read by a shell', () => {
    const address = 'http://127.0.0.1:4100/?key=a&b';
    for (const platform of ['linux', 'darwin', 'win32'] as const) {
      const [command, ...args] = browserCommand(address, platform);
      expect(args.at(-1)).toBe(address);
      expect(command).not.toMatch(/cmd|sh$/);
    }
  });
});
