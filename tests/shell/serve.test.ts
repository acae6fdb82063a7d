import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { createServer, request, type Server } from 'node:http';
import { type AddressInfo, connect } from 'node:net';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { type DeskSession, openDesk } from '../../electron/launch/desk-session.ts';
import { createDeskCalls } from '../../electron/serve/desk-calls.ts';
import { createDoor, type Door } from '../../electron/serve/door.ts';
import {
  closeServer,
  createDeskServer,
  listenOnLoopback,
} from '../../electron/serve/http-server.ts';
import {
  addressFromStation,
  announceStation,
  withdrawStation,
} from '../../electron/serve/station.ts';

let folder: string;
let session: DeskSession;
let server: Server;
let door: Door;
let port: number;
let cookie: string;

type Reply = {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  body: string;
};

/** Unlike fetch, sends the path and the headers exactly as they are given. */
function ask(
  method: string,
  path: string,
  headers: Record<string, string> = {},
  body?: string,
): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const call = request({ host: '127.0.0.1', port, method, path, headers }, (response) => {
      let text = '';
      response.setEncoding('utf8');
      response.on('data', (chunk: string) => {
        text += chunk;
      });
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body: text }),
      );
    });
    call.on('error', reject);
    call.end(body);
  });
}

function callHeaders(): Record<string, string> {
  return {
    cookie,
    origin: `http://127.0.0.1:${port}`,
    host: `127.0.0.1:${port}`,
    'content-type': 'application/json',
  };
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tappet-serve-'));
  const pageFolder = join(folder, 'page');
  mkdirSync(pageFolder);
  writeFileSync(join(pageFolder, 'index.html'), '<title>Tappet</title>');
  session = openDesk(join(folder, 'data'), '9.9.9');
  door = createDoor();
  server = createDeskServer({
    pageFolder,
    door,
    calls: createDeskCalls(session),
    stationSecret: 'the secret',
  });
  port = await listenOnLoopback(server, 0);
  const entered = await ask('GET', `/?key=${door.issueKey()}`);
  cookie = String(entered.headers['set-cookie']).split(';')[0] ?? '';
});

afterAll(async () => {
  await closeServer(server);
  await session.close();
  rmSync(folder, { recursive: true, force: true });
});

describe('the door', () => {
  test('a key is exchanged once for a cookie and does not stay in the address', async () => {
    const key = door.issueKey();
    const first = await ask('GET', `/?key=${key}`);
    expect(first.status).toBe(303);
    expect(first.headers.location).toBe('/');
    expect(String(first.headers['set-cookie'])).toMatch(
      /^tappet-\d+=[\w-]{43}; HttpOnly; SameSite=Strict; Path=\/$/,
    );
    const second = await ask('GET', `/?key=${key}`);
    expect(second.status).toBe(401);
    expect(second.headers['set-cookie']).toBeUndefined();
  });

  test('a look at the headers uses no key up', async () => {
    const key = door.issueKey();
    expect((await ask('HEAD', `/?key=${key}`)).status).toBe(401);
    expect((await ask('GET', `/?key=${key}`)).status).toBe(303);
  });

  test('whoever is in already is let through with an old address', async () => {
    expect((await ask('GET', '/?key=old', { cookie })).status).toBe(303);
  });

  test.each(['/', '/bench', '/index.html'])(
    '%s without a session says what to do',
    async (path) => {
      const { status, body } = await ask('GET', path);
      expect(status).toBe(401);
      expect(body).toContain('npm start');
    },
  );

  test('a call without a session is refused in the form of the desk', async () => {
    const { status, body } = await ask(
      'POST',
      '/rpc/office/about',
      { ...callHeaders(), cookie: 'tappet=x' },
      '{"json":{}}',
    );
    expect(status).toBe(401);
    expect(JSON.parse(body).json).toMatchObject({ code: 'UNAUTHORIZED' });
  });
});

describe('with a session', () => {
  test('the page comes with its policy and is not kept', async () => {
    const { status, headers, body } = await ask('GET', '/bench', { cookie });
    expect({ status, body }).toEqual({ status: 200, body: '<title>Tappet</title>' });
    expect(headers['content-security-policy']).toContain("default-src 'none'");
    expect(headers['cache-control']).toBe('no-store');
    expect(headers['x-frame-options']).toBe('DENY');
  });

  test('a call reaches the desk', async () => {
    const reply = await ask('POST', '/rpc/office/about', callHeaders(), '{"json":{}}');
    expect(reply.status).toBe(200);
    expect(JSON.parse(reply.body).json).toMatchObject({ program: 'Tappet', version: '9.9.9' });
    expect(reply.headers['cache-control']).toBe('no-store');
  });

  test('input that the contract does not know is a declared error with the path', async () => {
    const reply = await ask('POST', '/rpc/office/about', callHeaders(), '{"json":{"more":1}}');
    expect(reply.status).toBe(422);
    expect(JSON.parse(reply.body).json).toMatchObject({
      defined: true,
      code: 'BAD_INPUT',
      data: { issues: [{ path: expect.any(String), message: expect.any(String) }] },
    });
  });

  test.each([
    ['not JSON', 400],
    ['{"json":', 400],
    ['null', 400],
    ['{"json":{"more":"never"},"meta":[[1,"more"]]}', 422],
    ['{"json":{"more":"x"},"meta":[[5,"more"]]}', 400],
    ['', 422],
  ])('a body like %j is a declared error', async (body, status) => {
    const reply = await ask('POST', '/rpc/office/about', callHeaders(), body);
    expect(reply.status).toBe(status);
    expect(JSON.parse(reply.body).json).toMatchObject({
      code: 'BAD_INPUT',
      defined: true,
      data: {
        issues: [{ path: expect.any(String), message: expect.stringMatching(/^[A-Z].*\.$/) }],
      },
    });
  });

  test('a body beyond the limit is refused before it is read', async () => {
    const headers = { ...callHeaders(), 'content-length': String(1024 ** 3) };
    const reply = await new Promise<{ status?: number; body: string }>((resolve) => {
      const call = request(
        { host: '127.0.0.1', port, method: 'POST', path: '/rpc/office/about', headers },
        (response) => {
          response.once('data', (chunk: Buffer) => {
            resolve({ status: response.statusCode, body: chunk.toString() });
            call.destroy();
          });
        },
      );
      call.on('error', () => undefined);
      call.write('{"json":"');
    });
    expect(reply.status).toBe(413);
    expect(JSON.parse(reply.body).json).toMatchObject({
      code: 'BAD_INPUT',
      defined: true,
      message: expect.stringContaining('32 MB'),
    });
  });

  test('a procedure that is not there', async () => {
    const reply = await ask('POST', '/rpc/office/secrets', callHeaders(), '{"json":{}}');
    expect(reply.status).toBe(404);
    expect(JSON.parse(reply.body).json).toMatchObject({ code: 'NOT_FOUND' });
  });

  test('nothing is called by reading', async () => {
    expect((await ask('GET', '/rpc/office/about?data={}', { cookie })).status).toBe(405);
    expect((await ask('DELETE', '/', { cookie })).status).toBe(405);
  });

  test.each(['/../data/tappet.db', '/%2e%2e/data/tappet.db', '/..%2fdata%2ftappet.db'])(
    '%s leads nowhere',
    async (path) => {
      const { status, body } = await ask('GET', path, { cookie });
      expect(status).toBe(404);
      expect(body).not.toContain('SQLite');
    },
  );
});

describe('from elsewhere', () => {
  test('another name for this machine is refused, session or not', async () => {
    for (const path of ['/', `/?key=${door.issueKey()}`]) {
      expect((await ask('GET', path, { cookie, host: `shop.example:${port}` })).status).toBe(421);
    }
  });

  test.each([
    ['http://shop.example', 'cross-site'],
    ['http://localhost:1', 'same-site'],
    ['null', 'cross-site'],
  ])('a page at %s can call nothing', async (origin, site) => {
    const headers = { ...callHeaders(), origin, 'sec-fetch-site': site };
    const { status } = await ask('POST', '/rpc/office/about', headers, '{"json":{}}');
    expect(status).toBe(403);
  });

  test('a call that tells no origin is refused', async () => {
    const headers = { cookie, 'content-type': 'application/json' };
    expect((await ask('POST', '/rpc/office/about', headers, '{"json":{}}')).status).toBe(403);
  });

  test.each(['http://shop.example/', 'http://[', '*', 'no-slash'])(
    'a request for %s, which is no path, is refused',
    async (target) => {
      expect((await ask('GET', target, { cookie })).status).toBe(400);
    },
  );

  test('two names at once are refused', async () => {
    const said = await new Promise<string>((resolve) => {
      const socket = connect({ host: '127.0.0.1', port }, () =>
        socket.write(`GET / HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nHost: shop.example\r\n\r\n`),
      );
      socket.once('data', (chunk) => {
        resolve(chunk.toString());
        socket.destroy();
      });
    });
    expect(said).toMatch(/^HTTP\/1\.1 421 /);
  });

  test('only loopback is listened on', async () => {
    expect((server.address() as AddressInfo).address).toBe('127.0.0.1');
    const outside = Object.values(networkInterfaces())
      .flat()
      .filter((network) => network?.family === 'IPv4' && !network.internal);
    for (const network of outside) {
      const answered = await new Promise((resolve) => {
        const socket = connect({ host: network?.address, port }, () => resolve(true));
        socket.on('error', () => resolve(false));
      });
      expect(answered).toBe(false);
    }
  });

  test('a port that is taken is refused in a sentence', async () => {
    const second = createDeskServer({
      pageFolder: folder,
      door,
      calls: async () => false,
      stationSecret: '',
    });
    await expect(listenOnLoopback(second, port)).rejects.toThrow(
      `Port ${port} is taken by another program.`,
    );
  });
});

test('what arrives while the server closes is answered still', async () => {
  const closing = createDeskServer({
    pageFolder: folder,
    door,
    calls: async () => false,
    stationSecret: '',
  });
  const own = await listenOnLoopback(closing, 0);
  const socket = connect({ host: '127.0.0.1', port: own });
  socket.write(`GET / HTTP/1.1\r\nHost: 127.0.0.1:${own}\r\n`);
  await new Promise((resolve) => closing.once('connection', resolve));
  // The half of a request must have been read, or the connection counts as idle and is cut.
  await new Promise((resolve) => setTimeout(resolve, 200));
  const closed = closeServer(closing);
  socket.write('\r\n');
  const said = await new Promise<string>((resolve) =>
    socket.once('data', (chunk) => resolve(chunk.toString())),
  );
  expect(said).toMatch(/^HTTP\/1\.1 401 /);
  socket.destroy();
  await closed;
});

describe('one more browser', () => {
  test('a later start that can read the data folder gets a key of its own', async () => {
    const station = { pid: process.pid, port, secret: 'the secret' };
    announceStation(folder, station);
    expect(statSync(join(folder, 'station.json')).mode & 0o777).toBe(0o600);
    const address = await addressFromStation(folder);
    const entered = await fetch(String(address), { redirect: 'manual' });
    expect(entered.status).toBe(303);
    withdrawStation(folder);
    expect(existsSync(join(folder, 'station.json'))).toBe(false);
    expect(await addressFromStation(folder)).toBeUndefined();
  });

  test('what a crash left behind is of no account', async () => {
    announceStation(folder, { pid: 2 ** 30, port, secret: 'the secret' });
    expect(await addressFromStation(folder)).toBeUndefined();
    announceStation(folder, { pid: process.pid, port, secret: 'another secret' });
    expect(await addressFromStation(folder)).toBeUndefined();
    writeFileSync(join(folder, 'station.json'), '{');
    expect(await addressFromStation(folder)).toBeUndefined();
    expect(readFileSync(join(folder, 'station.json'), 'utf8')).toBe('{');
  });

  test('an address that somebody else answers with is not taken', async () => {
    const rogue = createServer((_request, response) =>
      response.end(JSON.stringify({ address: 'http://shop.example/?key=x' })),
    );
    await new Promise<void>((resolve) => rogue.listen(0, '127.0.0.1', resolve));
    const taken = (rogue.address() as AddressInfo).port;
    announceStation(folder, { pid: process.pid, port: taken, secret: 'the secret' });
    expect(await addressFromStation(folder)).toBeUndefined();
    await closeServer(rogue);
    withdrawStation(folder);
  });

  test('where no word can be left, serving goes on', async () => {
    const silent = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    mkdirSync(join(folder, 'station.json'));
    announceStation(folder, { pid: process.pid, port, secret: 'the secret' });
    withdrawStation(folder);
    expect(silent).toHaveBeenCalledWith(expect.stringContaining('No other browser'));
    silent.mockRestore();
    rmSync(join(folder, 'station.json'), { recursive: true });
  });

  test('no page can ask for a key, and no guess gets one', async () => {
    const right = { authorization: 'Bearer the secret' };
    expect((await ask('POST', '/station', right)).status).toBe(200);
    const wrong: Record<string, string>[] = [
      {},
      { authorization: 'Bearer guess' },
      { ...right, origin: `http://127.0.0.1:${port}` },
    ];
    for (const headers of wrong) {
      expect((await ask('POST', '/station', headers)).status).toBe(403);
    }
    expect((await ask('GET', '/station', right)).status).toBe(403);
  });
});
