import type { IncomingMessage, ServerResponse } from 'node:http';
import { BodyLimitPlugin, RPCHandler } from '@orpc/server/node';
import { desk, deskInterceptors } from '../desk/index.ts';
import type { DeskSession } from '../launch/desk-session.ts';

/** A photo from a telephone or a price file fits; a body meant to fill the memory does not. */
const largestBody = 32 * 1024 * 1024;

export type DeskCalls = (request: IncomingMessage, response: ServerResponse) => Promise<boolean>;

/** Answers POST /rpc/… with the desk. False when no procedure has that name. */
export function createDeskCalls({ context, gate }: DeskSession): DeskCalls {
  const handler = new RPCHandler(desk, {
    clientInterceptors: [gate.pass, ...deskInterceptors],
    plugins: [new BodyLimitPlugin({ maxBodySize: largestBody })],
  });
  return async (request, response) => {
    const { matched } = await handler.handle(request, response, { prefix: '/rpc', context });
    return matched;
  };
}
