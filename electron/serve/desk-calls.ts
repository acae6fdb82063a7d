import type { IncomingMessage, ServerResponse } from 'node:http';
import { ORPCError } from '@orpc/server';
import { BodyLimitPlugin, RPCHandler } from '@orpc/server/node';
import { desk, deskInterceptors, takeRequestKey } from '../desk/index.ts';
import type { DeskSession } from '../launch/desk-session.ts';
import { tellFaults } from '../launch/tell-faults.ts';

/** A photo from a telephone or a price file fits; a body meant to fill the memory does not. */
const largestBody = 32 * 1024 * 1024;

export type DeskCalls = (request: IncomingMessage, response: ServerResponse) => Promise<boolean>;

function unusable(status: number, message: string): ORPCError<'BAD_INPUT', unknown> {
  return new ORPCError('BAD_INPUT', {
    defined: true,
    status,
    message,
    data: { issues: [{ path: '', message }] },
  });
}

/** A body that can't be read is bad input like any other: the contract declares the error. */
async function nameUnreadable<T>({ next }: { next: () => Promise<T> }): Promise<T> {
  try {
    return await next();
  } catch (error) {
    if (!(error instanceof ORPCError)) {
      throw unusable(400, 'This call is not in a form that the desk reads. Load the page anew.');
    }
    if (error.code !== 'PAYLOAD_TOO_LARGE') throw error;
    throw unusable(413, 'This is more than the desk takes at once (32 MB). Take a smaller file.');
  }
}

/** Answers POST /rpc/… with the desk. False when no procedure has that name. */
export function createDeskCalls({ context, gate }: DeskSession): DeskCalls {
  const handler = new RPCHandler(desk, {
    interceptors: [nameUnreadable, takeRequestKey],
    clientInterceptors: [tellFaults, gate.pass, ...deskInterceptors],
    plugins: [new BodyLimitPlugin({ maxBodySize: largestBody })],
  });
  return async (request, response) => {
    const { matched } = await handler.handle(request, response, { prefix: '/rpc', context });
    return matched;
  };
}
