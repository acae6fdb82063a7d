import {
  createServer,
  type IncomingMessage,
  type OutgoingHttpHeaders,
  type Server,
  type ServerResponse,
} from 'node:http';
import type { AddressInfo } from 'node:net';
import { PlainRefusal } from '../launch/sentence.ts';
import type { DeskCalls } from './desk-calls.ts';
import { type Door, hashOf } from './door.ts';
import { pageFile } from './page-files.ts';
import { needsKey, plainPage } from './plain-page.ts';
import { isOwnHost, isOwnOrigin, requestTarget } from './same-machine.ts';
import { securityHeaders } from './security-headers.ts';
import { sessionCookie, sessionToken } from './session-cookie.ts';

export type ServeParts = {
  /** The folder of the built renderer. */
  pageFolder: string;
  door: Door;
  calls: DeskCalls;
  /** Shared with later starts on this data folder, so that they may ask for a key. */
  stationSecret: string;
};

/** Milliseconds for the headers and for the whole request: on one machine, whoever dawdles holds up. */
const patience = {
  headersTimeout: 10_000,
  requestTimeout: 60_000,
  connectionsCheckingInterval: 5_000,
};

type Answer = { status: number; headers?: OutgoingHttpHeaders; body?: string | Uint8Array };

/** The HTTP side of the desk. It is bound to loopback by {@link listenOnLoopback}. */
export function createDeskServer(parts: ServeParts): Server {
  const server = createServer(patience, (request, response) => {
    answer(request, response, port, parts)
      .then((reply) => reply && send(request, response, reply))
      .catch((error: unknown) => {
        process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
        if (response.headersSent) response.destroy();
        else
          send(
            request,
            response,
            page(500, 'That went wrong', 'Try once more, then start Tappet again.'),
          );
      });
  });
  // A server that is closing has no address any more, and answers on the connections that it has.
  let port = 0;
  server.once('listening', () => {
    ({ port } = server.address() as AddressInfo);
  });
  return server;
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  port: number,
  { pageFolder, door, calls, stationSecret }: ServeParts,
): Promise<Answer | undefined> {
  const url = requestTarget(request.url);
  if (!url) return page(400, 'Wrong address', 'Open Tappet by the address that npm start printed.');
  if (!isOwnHost(request, port)) {
    return page(421, 'Wrong address', 'Open Tappet by the address that npm start printed.');
  }
  if (url.pathname === '/station') return stationKey(request, port, door, stationSecret);

  const isCall = url.pathname === '/rpc' || url.pathname.startsWith('/rpc/');
  const hasSession = door.isSession(sessionToken(port, request.headers.cookie));
  const reads = request.method === 'GET' || request.method === 'HEAD';
  const key = url.searchParams.get('key');
  // To ask for the headers alone uses no key up.
  if (key !== null && url.pathname === '/' && request.method === 'GET') {
    return enter(key, hasSession, port, door);
  }
  if (!hasSession) return isCall ? refusal(401, 'UNAUTHORIZED', needsKey) : keyPage();

  if (isCall) {
    if (request.method !== 'POST') return { status: 405, headers: { allow: 'POST' } };
    if (!isOwnOrigin(request.headers)) {
      return refusal(403, 'FORBIDDEN', 'Only the page of Tappet itself may call the desk.');
    }
    for (const [name, value] of Object.entries(securityHeaders)) response.setHeader(name, value);
    response.setHeader('cache-control', 'no-store');
    if (await calls(request, response)) return undefined;
    return refusal(404, 'NOT_FOUND', 'The desk has no procedure of that name.');
  }
  if (!reads) return { status: 405, headers: { allow: 'GET, HEAD' } };
  const file = await pageFile(pageFolder, url.pathname);
  if (!file) return page(404, 'Not here', 'There is no such page. Go back to the start page.');
  return {
    status: 200,
    headers: { 'content-type': file.type, 'cache-control': file.cache },
    body: file.bytes,
  };
}

function enter(key: string, hasSession: boolean, port: number, door: Door): Answer {
  const token = door.redeemKey(key);
  if (token === undefined && !hasSession) return keyPage();
  return {
    status: 303,
    headers: {
      location: '/',
      ...(token !== undefined && { 'set-cookie': sessionCookie(port, token) }),
    },
  };
}

/** A later `npm start` on the same data folder, which has read the secret, gets another key. */
function stationKey(
  request: IncomingMessage,
  port: number,
  door: Door,
  stationSecret: string,
): Answer {
  const { origin, authorization } = request.headers;
  // A page of any site, even our own, sends Origin with a POST and has no business here.
  if (
    request.method !== 'POST' ||
    origin !== undefined ||
    !isSame(authorization, `Bearer ${stationSecret}`)
  ) {
    return refusal(403, 'FORBIDDEN', 'Only npm start on this computer may ask for another key.');
  }
  return json(200, { address: `http://127.0.0.1:${port}/?key=${door.issueKey()}` });
}

/** Compares hashes, so that the time it takes tells nothing of the secret. */
function isSame(given: string | undefined, secret: string): boolean {
  return given !== undefined && hashOf(given) === hashOf(secret);
}

function keyPage(): Answer {
  return page(401, 'This browser needs a key', needsKey);
}

function page(status: number, title: string, sentence: string): Answer {
  return {
    status,
    headers: { 'content-type': 'text/html; charset=utf-8' },
    body: plainPage(title, sentence),
  };
}

function json(status: number, body: unknown): Answer {
  return {
    status,
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  };
}

/** In the form in which the desk's own errors travel, so that the page shows its sentence. */
function refusal(status: number, code: string, message: string): Answer {
  return json(status, { json: { defined: false, code, status, message }, meta: [] });
}

function send(request: IncomingMessage, response: ServerResponse, reply: Answer): void {
  // A body that nobody reads would hold the connection open.
  const unread = request.method !== 'GET' && request.method !== 'HEAD';
  response.writeHead(reply.status, {
    ...securityHeaders,
    'cache-control': 'no-store',
    ...(unread && { connection: 'close' }),
    ...reply.headers,
  });
  response.end(request.method === 'HEAD' ? undefined : reply.body);
}

/**
 * Binds to 127.0.0.1, never to the network.
 * @returns the port
 * @throws PlainRefusal when the port is taken or not allowed
 */
export function listenOnLoopback(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      reject(
        new PlainRefusal(
          'PORT',
          error.code === 'EADDRINUSE'
            ? `Port ${port} is taken by another program. Choose another with --port N, or leave --port out.`
            : `Port ${port} can't be used (${error.code ?? error.message}). Leave --port out and Tappet finds a free one.`,
        ),
      );
    });
    server.listen(port, '127.0.0.1', () => resolve((server.address() as AddressInfo).port));
  });
}

/** Lets the answers under way go out, then closes; connections that hang are cut after the limit. */
export function closeServer(server: Server, limit = 3_000): Promise<void> {
  return new Promise((resolve) => {
    const timer = setTimeout(() => server.closeAllConnections(), limit);
    server.close(() => {
      clearTimeout(timer);
      resolve();
    });
    server.closeIdleConnections();
  });
}
