import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { createORPCClient } from '@orpc/client';
import { RPCLink as HttpLink } from '@orpc/client/fetch';
import { RPCLink as PortLink } from '@orpc/client/message-port';
import { RPCHandler as PortHandler } from '@orpc/server/message-port';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { deskInterceptors, desk as router } from '../../electron/desk/index.ts';
import { createCallGate } from '../../electron/launch/call-gate.ts';
import { createDeskCalls } from '../../electron/serve/desk-calls.ts';
import { contract } from '../../shared/contract/index.ts';
import { openTestShop, type TestShop } from './shop.ts';

/**
 * Every procedure is called with input that is wrong in every field, by each way in. The wrong inputs are
 * made from the contract itself, so that a new procedure is tested without anybody thinking of it.
 */

type Call = (input: unknown) => Promise<unknown>;
type Rooms = Record<string, Record<string, Call>>;

/** Every procedure has been given this; nothing in the contract takes it. */
const WRONG = { neither: ['text', 'nor', 'number'] };

const FieldsOfSchema = z.object({ properties: z.record(z.string(), z.unknown()).default({}) });
const AlternativesOfSchema = z.object({ anyOf: z.array(FieldsOfSchema) });

const unknownField = (path: string) => ({
  path,
  message: 'There is no field of this name here.',
});

const fieldsOf = (schema: unknown): string[] => {
  const json = z.toJSONSchema(schema as z.ZodType, { io: 'input' });
  const union = AlternativesOfSchema.safeParse(json);
  const forms = union.success ? union.data.anyOf : [FieldsOfSchema.parse(json)];
  return [...new Set(forms.flatMap(({ properties }) => Object.keys(properties)))];
};

const procedures = Object.entries(contract).flatMap(([room, inRoom]) =>
  Object.entries(inRoom).map(([name, procedure]) => ({
    title: `${room}.${name}`,
    room,
    name,
    fields: fieldsOf(procedure['~orpc'].inputSchema),
  })),
);

let shop: TestShop;
let server: Server;
let ports: MessageChannel;
let ways: Record<string, Rooms>;

beforeAll(async () => {
  shop = await openTestShop();
  const session = { context: shop.context, gate: createCallGate(), close: async () => {} };
  const calls = createDeskCalls(session);
  server = createServer((request, response) => void calls(request, response));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;

  ports = new MessageChannel();
  new PortHandler(router, { clientInterceptors: deskInterceptors }).upgrade(ports.port1, {
    context: shop.context,
  });
  ports.port1.start();
  ports.port2.start();

  ways = {
    'in process': shop.desk as unknown as Rooms,
    'over HTTP': createORPCClient(new HttpLink({ url: `http://127.0.0.1:${port}/rpc` })),
    'over a message port': createORPCClient(new PortLink({ port: ports.port2 })),
  };
});

afterAll(async () => {
  ports.port1.close();
  await new Promise((resolve) => server.close(resolve));
  shop.close();
});

const callOn = (way: string, room: string, name: string): Call => {
  const call = ways[way]?.[room]?.[name];
  if (call === undefined) throw new Error(`${room}.${name} is not to be had ${way}.`);
  return call;
};

describe.each(['in process', 'over HTTP', 'over a message port'])(
  'bad input %s writes nothing',
  (way) => {
    let before: string;
    beforeAll(() => {
      before = shop.contents();
    });
    afterAll(() => {
      expect(shop.contents()).toBe(before);
    });

    test.each(procedures)('$title names each field', async (procedure) => {
      const { room, name, fields } = procedure;
      const call = callOn(way, room, name);
      for (const field of fields) {
        const refusal = await call({ [field]: WRONG }).catch((error: unknown) => error);
        expect(refusal).toMatchObject({ code: 'BAD_INPUT', defined: true, status: 422 });
        const { data } = refusal as { data: { issues: { path: string; message: string }[] } };
        expect(data.issues.map(({ path }) => path.split('.')[0])).toSatisfy(
          (paths: string[]) => paths.includes(field) || paths.includes(''),
        );
        for (const { message } of data.issues)
          expect(message).toMatch(/^[A-Z].*[.:;?]|characters/s);
      }
      await expect(call({ nobodyKnowsThis: 1 })).rejects.toMatchObject({
        code: 'BAD_INPUT',
        data: { issues: expect.arrayContaining([unknownField('nobodyKnowsThis')]) },
      });
      await expect(call('not even a group of fields')).rejects.toMatchObject({ code: 'BAD_INPUT' });
    });
  },
);

test('text with a control character or half a character is refused at its field', async () => {
  const { desk, by } = shop;
  for (const name of ['Greta\u0000', 'Greta\u001b[2J', 'Greta \ud800'])
    await expect(desk.counter.addCustomer({ by, name })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { issues: [{ path: 'name' }] },
    });
});
