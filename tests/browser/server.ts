import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { copyDemoStore } from './demo-store.ts';
import { toldAhead, toldAheadAnew, toldStart } from './told-time.ts';

const root = resolve(import.meta.dirname, '..', '..');

export type RunningServer = {
  /** `http://127.0.0.1:PORT` */
  origin: string;
  /** With the one-time key. */
  address: string;
  folder: string;
  stop: () => Promise<void>;
};

/** Starts Tappet at the told time, on a fresh data folder and a free port. */
export async function startServer(shop: 'demo' | 'empty'): Promise<RunningServer> {
  const folder = mkdtempSync(join(tmpdir(), 'tappet-browser-'));
  if (shop === 'demo') await copyDemoStore(folder, fillDemoShopIn, new Date(toldStart));
  const { address, stop } = await serve(folder, toldAhead);
  return {
    origin: new URL(address).origin,
    address,
    folder,
    async stop() {
      await stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Its story ends where the told time begins: a copy of it serves whoever begins there. */
async function fillDemoShopIn(folder: string): Promise<void> {
  const { stop } = await serve(folder, toldAheadAnew(), '--demo');
  await stop();
}

/** @param ahead of the machine's clock, milliseconds */
async function serve(folder: string, ahead: number, ...flags: string[]) {
  const program = join(root, 'tests', 'browser', 'told-server.ts');
  const args = [program, `--data=${folder}`, `--ahead=${ahead}`, ...flags];
  const child = spawn(process.execPath, args, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
  return {
    address: await addressFrom(child),
    async stop() {
      const gone = new Promise((done) => child.once('exit', done));
      child.kill('SIGTERM');
      await gone;
    },
  };
}

function addressFrom(child: ChildProcess): Promise<string> {
  return new Promise((found, failed) => {
    let said = '';
    const listen = (chunk: Buffer): void => {
      said += chunk.toString();
      const address = /^Tappet is at (\S+)$/m.exec(said)?.[1];
      if (address) found(address);
    };
    child.stdout?.on('data', listen);
    child.stderr?.on('data', listen);
    child.on('exit', (code) => failed(new Error(`Tappet ended with ${code}:\n${said}`)));
  });
}

/** Uses up the key and gives what a browser then keeps. */
export async function sessionCookieFrom(address: string): Promise<{ name: string; value: string }> {
  const response = await fetch(address, { redirect: 'manual' });
  const cookie = response.headers.get('set-cookie')?.split(';')[0] ?? '';
  const [name = '', value = ''] = cookie.split('=');
  if (!value) throw new Error(`No session for ${address}: ${response.status}`);
  return { name, value };
}
