import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { type DeskOptions, openDeskFor } from '../launch/desk-session.ts';
import { programRoot, programVersion } from '../launch/root.ts';
import { hasDesktop, openBrowser } from './browser.ts';
import { createDeskCalls } from './desk-calls.ts';
import { createDoor } from './door.ts';
import { closeServer, createDeskServer, listenOnLoopback } from './http-server.ts';
import { addressFromStation, announceStation, withdrawStation } from './station.ts';
import { untilStopped } from './until-stopped.ts';

type ServeOptions = {
  folder: string;
  demo: boolean;
  /** 0 for any free port. */
  port: number;
};

type Serving = {
  /** With a one-time key in it. */
  address: string;
  close: () => Promise<void>;
};

/** Opens the data folder and serves the desk on loopback until closed. */
export async function startServing(
  { folder, demo, port }: ServeOptions,
  options: DeskOptions = {},
): Promise<Serving> {
  const session = await openDeskFor({ folder, demo }, programVersion(), options);
  const door = createDoor();
  const stationSecret = randomBytes(32).toString('base64url');
  const server = createDeskServer({
    pageFolder: join(programRoot, 'dist', 'renderer'),
    door,
    calls: createDeskCalls(session),
    stationSecret,
  });
  try {
    const actualPort = await listenOnLoopback(server, port);
    announceStation(folder, { pid: process.pid, port: actualPort, secret: stationSecret });
    return {
      address: `http://127.0.0.1:${actualPort}/?key=${door.issueKey()}`,
      async close() {
        withdrawStation(folder);
        await Promise.all([closeServer(server), session.close()]);
      },
    };
  } catch (error) {
    await Promise.all([closeServer(server), session.close()]);
    throw error;
  }
}

function announce(address: string): void {
  process.stdout.write(`Tappet is at ${address}\n`);
  // Only for a person: what a script started, a script will open.
  if (process.stdout.isTTY && hasDesktop()) openBrowser(address);
}

/** `npm start` without a window: prints the address and serves until told to stop. */
export async function serveUntilStopped(options: ServeOptions): Promise<void> {
  const running = await addressFromStation(options.folder);
  if (running !== undefined) {
    process.stdout.write('Tappet is running already. This address is for one more browser.\n');
    announce(running);
    return;
  }
  const serving = await startServing(options);
  const stopped = untilStopped();
  announce(serving.address);
  process.stdout.write('The address works once, in one browser. Ctrl+C stops Tappet.\n');
  await stopped;
  await serving.close();
}
