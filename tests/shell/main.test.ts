import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createORPCClient } from '@orpc/client';
import { RPCLink } from '@orpc/client/message-port';
import type { ContractRouterClient } from '@orpc/contract';
import { afterAll, expect, test, vi } from 'vitest';
import { menuTemplate } from '../../electron/window/menu.ts';
import type { Contract } from '../../shared/contract/index.ts';
import { app, ipcMain, told } from './electron-module.ts';
import { handshake, ownFrame, preventable } from './stand-in-electron.ts';

vi.mock('electron', () => import('./electron-module.ts'));

const folder = mkdtempSync(join(tmpdir(), 'tappet-main-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('main.ts puts it together: locked down, one window, the desk handed over, drained at the end', async () => {
  process.argv = ['electron', '.', '--data', folder];
  await import('../../electron/main.ts');
  await vi.waitFor(() => expect(told.windows).toHaveLength(1));

  // One instance for each data folder.
  expect(told.paths.get('userData')).toBe(join(folder, 'window'));
  expect(told.locks).toBe(1);

  // Each process of a page is in its sandbox, and no menu leads out of the program.
  expect(told.sandboxed).toBe(true);
  expect(told.menu).toEqual([menuTemplate(process.platform)]);

  // Our own scheme, with no more rights than it needs.
  expect(told.schemes).toEqual([
    { scheme: 'tappet', privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
  const answer = told.handled.get('tappet');
  const reply = await answer?.({ method: 'GET', url: 'tappet://desk/../../package.json' });
  expect(reply?.status).toBe(404);
  expect(reply?.headers.get('content-security-policy')).toContain("default-src 'none'");

  const [window] = told.windows;
  expect(window?.loaded).toEqual(['tappet://desk/']);
  expect(window?.options.webPreferences).toMatchObject({
    sandbox: true,
    contextIsolation: true,
    nodeIntegration: false,
    webSecurity: true,
  });
  expect(window?.options.webPreferences).not.toHaveProperty('nodeIntegrationInSubFrames');
  expect(told.permission).toHaveLength(3);

  // The page asks, from its end of a real channel.
  const { event, pageEnds, end } = handshake(ownFrame);
  ipcMain.emit('tappet:desk', event);
  const [port] = pageEnds;
  if (!port) throw new Error('There is no port.');
  const client: ContractRouterClient<Contract> = createORPCClient(new RPCLink({ port }));
  port.start();
  expect((await client.office.about({})).version).toBe('9.9.9');
  expect(existsSync(join(folder, 'tappet.db'))).toBe(true);

  // A second start shows the window that there is.
  app.emit('second-instance');
  expect(told.order).toEqual(['restore', 'focus']);
  expect(told.windows).toHaveLength(1);

  // Closing the window quits; quitting closes the store first.
  app.emit('window-all-closed');
  expect(told.order.at(-1)).toBe('quit');
  const quitting = preventable();
  app.emit('before-quit', quitting);
  expect(quitting.prevented).toBe(true);
  await vi.waitFor(() => expect(told.order.slice(-2)).toEqual(['quit', 'quit']));
  await expect(client.office.about({})).rejects.toMatchObject({ code: 'STORE_BUSY' });
  end();
});

test('a folder that can’t be had is told in a sentence, and no window opens', async () => {
  told.order.length = 0;
  process.argv = ['electron', '.', '--data', import.meta.filename];
  // The query makes it another module, which runs anew.
  const again = '../../electron/main.ts?refused';
  await import(again);
  expect(told.order).toEqual([
    expect.stringMatching(/^error box: Tappet: The place of the store can’t be read and written\./),
    'exit',
  ]);
  expect(told.windows).toHaveLength(1);
});
