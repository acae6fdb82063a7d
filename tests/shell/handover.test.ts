import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createORPCClient } from '@orpc/client';
import { RPCLink } from '@orpc/client/message-port';
import type { ContractRouterClient } from '@orpc/contract';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type DeskSession, openDesk } from '../../electron/launch/desk-session.ts';
import { channels } from '../../electron/window/channels.ts';
import { handOverDesk } from '../../electron/window/desk-handover.ts';
import { isTrustedFrame } from '../../electron/window/trusted-frame.ts';
import type { Contract } from '../../shared/contract/index.ts';
import { handshake, ownFrame, StandInIpcMain } from './stand-in-electron.ts';

let folder: string;
let session: DeskSession;
const ipcMain = new StandInIpcMain();

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tappet-handover-'));
  session = openDesk(folder, '9.9.9');
  handOverDesk(ipcMain as unknown as Parameters<typeof handOverDesk>[0], session);
});
afterAll(async () => {
  await session.close();
  rmSync(folder, { recursive: true, force: true });
});

function clientOn(port: MessagePort | undefined): ContractRouterClient<Contract> {
  if (!port) throw new Error('There is no port.');
  const client = createORPCClient<ContractRouterClient<Contract>>(new RPCLink({ port }));
  port.start();
  return client;
}

describe('the handshake', () => {
  test('gives our own page the desk, over one real channel', async () => {
    const { event, pageEnds, end } = handshake(ownFrame);
    // What the page asks before the main process has taken the port waits in it.
    const asked = clientOn(pageEnds[0]).office.about({});
    ipcMain.emit(channels.desk, event);
    expect(await asked).toMatchObject({ program: 'Tappet', version: '9.9.9' });
    end();
  });

  test('bad input comes back declared, as over HTTP', async () => {
    const { event, pageEnds, end } = handshake(ownFrame);
    ipcMain.emit(channels.desk, event);
    const client = clientOn(pageEnds[0]);
    await expect(client.office.about({ more: 1 } as never)).rejects.toMatchObject({
      defined: true,
      code: 'BAD_INPUT',
      data: { issues: [{ path: expect.any(String), message: expect.any(String) }] },
    });
    end();
  });

  test.each([
    ['a frame within our page', { url: 'tappet://desk/', parent: ownFrame }],
    ['a page of the web', { url: 'https://desk/', parent: null }],
    ['a file', { url: 'file:///tappet/desk', parent: null }],
    ['another host of our scheme', { url: 'tappet://other/', parent: null }],
    ['a frame that is gone', null],
  ])('%s gets nothing, and its port is closed', async (_who, frame) => {
    const { event, pageEnds, closed, end } = handshake(frame);
    const gone = new Promise((resolve) => pageEnds[0]?.addEventListener('close', resolve));
    ipcMain.emit(channels.desk, event);
    expect(closed).toEqual([true]);
    await gone;
    end();
  });

  test.each([0, 2])('%i ports instead of one are refused', (count) => {
    const { event, closed, end } = handshake(ownFrame, count);
    ipcMain.emit(channels.desk, event);
    expect(closed).toEqual(Array(count).fill(true));
    end();
  });

  test('a page that reloads shakes hands anew and its old port is closed', async () => {
    const first = handshake(ownFrame, 1, 7);
    const second = handshake(ownFrame, 1, 7);
    const other = handshake(ownFrame, 1, 8);
    for (const { event } of [first, other, second]) ipcMain.emit(channels.desk, event);
    expect([first.closed, second.closed, other.closed]).toEqual([[true], [false], [false]]);
    const answer = await clientOn(second.pageEnds[0]).office.about({});
    expect(answer.program).toBe('Tappet');
    for (const each of [first, second, other]) each.end();
  });
});

test('a frame is trusted only at the top of a window and on our page', () => {
  expect(isTrustedFrame(ownFrame)).toBe(true);
  expect(isTrustedFrame(undefined)).toBe(false);
  expect(isTrustedFrame({ url: '', parent: null })).toBe(false);
});

test('a back-up is brought back over it, while another page asks', async () => {
  const [one, other] = [handshake(ownFrame, 1, 7), handshake(ownFrame, 1, 8)];
  for (const { event } of [one, other]) ipcMain.emit(channels.desk, event);
  const { office, counter } = clientOn(one.pageEnds[0]);
  const { id: by } = await office.openShop({
    ownerName: 'Ruth Okafor',
    shopName: 'Millbrook Small Engines',
    currency: 'USD',
    locale: 'en-US',
    timeZone: 'America/Chicago',
    country: 'US',
    paperSize: 'Letter',
  });
  const { backUp } = await office.backUp({ by });
  const from = { fileName: backUp?.fileName ?? '' };
  await counter.addCustomer({ by, name: 'Ida Brandt' });
  const { found } = await office.checkBackUp({ from });
  const order = {
    by,
    from,
    sha256: found?.sha256 ?? '',
    storeEntries: found?.lost.storeEntries ?? 0,
    reason: 'A try',
  };
  const bringing = office.bringBack(order);
  const asking = clientOn(other.pageEnds[0]);
  let broughtBack = 0;
  while (broughtBack === 0) ({ broughtBack } = await asking.office.about({}));
  expect(await bringing).toMatchObject({ state: 'done', trouble: null });
  expect(await counter.findCustomers({ text: '' })).toEqual([]);
  one.end();
  other.end();
}, 60_000);
