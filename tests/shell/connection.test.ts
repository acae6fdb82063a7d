import { createORPCClient } from '@orpc/client';
import { afterEach, expect, test, vi } from 'vitest';
import { openLink } from '../../renderer/common/connection/link.ts';
import { paperBytes } from '../../renderer/common/connection/papers.ts';
import { deskHandover } from '../../shared/desktop-bridge.ts';

afterEach(() => vi.unstubAllGlobals());

test('in the window, the page posts one port to itself and speaks through the other', async () => {
  const posted: unknown[][] = [];
  vi.stubGlobal('window', {
    tappetDesktop: {},
    location: { origin: 'tappet://desk' },
    postMessage: (...args: unknown[]) => posted.push(args),
  });
  const link = openLink();
  expect(posted).toEqual([[deskHandover, 'tappet://desk', [expect.any(MessagePort)]]]);
  const [port] = posted.flatMap(([, , ports]) => ports as MessagePort[]);
  if (!port) throw new Error('There is no port.');
  const arrived = new Promise((resolve) => {
    port.onmessage = ({ data }) => resolve(String(data));
  });
  const client = createORPCClient<{ office: { about: (input: object) => Promise<unknown> } }>(link);
  client.office.about({}).catch(() => undefined);
  expect(await arrived).toContain('office/about');
  port.close();
});

test('in a browser, a call is a POST to the same origin', async () => {
  vi.stubGlobal('window', { location: { origin: 'http://127.0.0.1:4100' } });
  const asked: Request[] = [];
  vi.stubGlobal('fetch', async (request: Request) => {
    asked.push(request);
    return new Response('{"json":{"program":"Tappet"}}', {
      headers: { 'content-type': 'application/json' },
    });
  });
  const client = createORPCClient<{ office: { about: (input: object) => Promise<unknown> } }>(
    openLink(),
  );
  expect(await client.office.about({})).toEqual({ program: 'Tappet' });
  expect(asked[0]?.method).toBe('POST');
  expect(asked[0]?.url).toBe('http://127.0.0.1:4100/rpc/office/about');
});

test('the bytes of a paper that came as base64', () => {
  expect(paperBytes('JVBERi0=')).toEqual(new TextEncoder().encode('%PDF-'));
});
