import { randomUUID } from 'node:crypto';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { MessageChannel } from 'node:worker_threads';
import { createORPCClient } from '@orpc/client';
import { RPCLink as HttpLink } from '@orpc/client/fetch';
import { RPCLink as PortLink } from '@orpc/client/message-port';
import type { ContractRouterClient } from '@orpc/contract';
import { RPCHandler as PortHandler } from '@orpc/server/message-port';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { desk, deskInterceptors, takeRequestKey } from '../../electron/desk/index.ts';
import { createCallGate } from '../../electron/launch/call-gate.ts';
import { createDeskCalls } from '../../electron/serve/desk-calls.ts';
import type { Contract } from '../../shared/contract/index.ts';
import { REQUEST_KEY } from '../../shared/request-key.ts';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

/** A call whose answer was lost comes again under its key: it has been written, and is not written twice. */

type Keyed = { key?: string };
type Client = ContractRouterClient<Contract, Keyed>;

let shop: TestShop;
let server: Server;
let ports: MessageChannel;
const ways: Record<string, Client> = {};

const headers = ({ context }: { context: Keyed }): Record<string, string> =>
  context.key === undefined ? {} : { [REQUEST_KEY]: context.key };

beforeAll(async () => {
  shop = await openTestShop();
  const { context } = shop;
  const calls = createDeskCalls({ context, gate: createCallGate(), close: async () => {} });
  server = createServer((request, response) => void calls(request, response));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  ways['over HTTP'] = createORPCClient(
    new HttpLink<Keyed>({ url: `http://127.0.0.1:${port}/rpc`, headers }),
  );

  ports = new MessageChannel();
  new PortHandler(desk, {
    interceptors: [takeRequestKey],
    clientInterceptors: deskInterceptors,
  }).upgrade(ports.port1, { context });
  ports.port1.start();
  ports.port2.start();
  ways['over a message port'] = createORPCClient(
    new PortLink<Keyed>({ port: ports.port2, headers }),
  );
});
afterAll(async () => {
  ports.port1.close();
  await new Promise((resolve) => server.close(resolve));
  shop.close();
});

const clientOf = (way: string): Client => {
  const client = ways[way];
  if (client === undefined) throw new Error(`Nobody calls ${way}.`);
  return client;
};

let made = 0;
/** A machine of its own, to be taken in. */
const intake = () => {
  made += 1;
  const plain = plainIntake(shop.by);
  return { ...plain, machine: { ...plain.machine, serial: `FM-7 Q${made}Z` } };
};

describe.each(['over HTTP', 'over a message port'])('a call %s', (way) => {
  test('that comes again gets the answer that it had, and takes no second number', async () => {
    const { counter } = clientOf(way);
    const input = intake();
    const context = { key: randomUUID() };
    const taken = await counter.takeIn(input, { context });
    const before = shop.contents();
    expect(await counter.takeIn(input, { context })).toEqual(taken);
    expect(shop.contents()).toBe(before);
    const next = await counter.takeIn(intake(), { context: { key: randomUUID() } });
    expect(next.number).toBe(taken.number + 1);
  });

  test('without a key, or with one that is none, is a call of its own', async () => {
    const { counter } = clientOf(way);
    const input = { by: shop.by, name: 'Cy Adair' };
    const first = await counter.addCustomer(input, { context: { key: 'again' } });
    const second = await counter.addCustomer(input, { context: { key: 'again' } });
    const third = await counter.addCustomer(input);
    expect(new Set([first.id, second.id, third.id]).size).toBe(3);
  });

  test('that was refused may be made again under its key', async () => {
    const { counter } = clientOf(way);
    const context = { key: randomUUID() };
    const input = intake();
    const past = { ...input, promisedFor: '2026-03-01' };
    await expect(counter.takeIn(past, { context })).rejects.toMatchObject({
      code: 'PROMISED_IN_THE_PAST',
    });
    expect(await counter.takeIn(input, { context })).toMatchObject({
      code: expect.stringMatching(/^J\d{6}$/),
    });
  });

  test('is known by its key for a day, and only as the call that it was', async () => {
    const { counter, office } = clientOf(way);
    const context = { key: randomUUID() };
    const input = { by: shop.by, name: 'Di Brandt' };
    const first = await counter.addCustomer(input, { context });
    const other = { by: shop.by, name: `Ada ${made} ${way}`, role: 'bench' as const };
    expect(await office.addStaff(other, { context })).toMatchObject({ name: other.name });
    shop.setClock(new Date(shop.context.now().getTime() + 25 * 3_600_000).toISOString());
    await counter.addCustomer(input, { context: { key: randomUUID() } });
    const late = await counter.addCustomer(input, { context });
    expect(late.id).not.toBe(first.id);
  });
});
