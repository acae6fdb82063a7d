import { beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { deskHandover } from '../../shared/desktop-bridge.ts';

type Listener = (event: {
  source: unknown;
  origin: string;
  data: unknown;
  ports: unknown[];
}) => void;

const { posted, invoked, exposed } = vi.hoisted(() => ({
  posted: [] as unknown[][],
  invoked: [] as unknown[][],
  exposed: new Map<string, Record<string, (...args: unknown[]) => unknown>>(),
}));
vi.mock('electron', () => ({
  contextBridge: {
    exposeInMainWorld: (name: string, api: never) => exposed.set(name, api),
  },
  ipcRenderer: {
    postMessage: (...args: unknown[]) => posted.push(args),
    invoke: (...args: unknown[]) => invoked.push(args),
  },
}));

const listeners: Listener[] = [];
const page = {
  location: { origin: 'tappet://desk' },
  addEventListener: (_name: string, listener: Listener) => listeners.push(listener),
};

beforeAll(async () => {
  vi.stubGlobal('window', page);
  await import('../../electron/preload.ts');
});
beforeEach(() => {
  posted.length = 0;
});

const port = { name: 'a port' };
const right = { source: page, origin: 'tappet://desk', data: deskHandover, ports: [port] };

test('one port from the page itself is passed on', () => {
  for (const listener of listeners) listener(right);
  expect(posted).toEqual([[deskHandover, null, [port]]]);
});

test.each([
  ['another window', { ...right, source: {} }],
  ['another origin', { ...right, origin: 'https://shop.example' }],
  ['another name', { ...right, data: 'port' }],
  ['no port', { ...right, ports: [] }],
  ['two ports', { ...right, ports: [port, port] }],
])('%s is passed over', (_what, event) => {
  for (const listener of listeners) listener(event);
  expect(posted).toEqual([]);
});

test('the page is offered two narrow functions and no way to choose a channel', () => {
  expect([...exposed.keys()]).toEqual(['tappetDesktop']);
  const bridge = exposed.get('tappetDesktop');
  expect(Object.keys(bridge ?? {}).sort()).toEqual(['printPaper', 'savePaper']);
  const bytes = new Uint8Array([1]);
  bridge?.savePaper?.('a.pdf', bytes, 'more');
  bridge?.printPaper?.(bytes, 'more');
  expect(invoked).toEqual([
    ['tappet:save-paper', 'a.pdf', bytes],
    ['tappet:print-paper', bytes],
  ]);
});
