import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isAlive } from '../launch/is-alive.ts';

/** How a later start on the same data folder finds the server that is running already. */
export type Station = { pid: number; port: number; secret: string };

function stationFile(folder: string): string {
  return join(folder, 'station.json');
}

function isStation(value: unknown): value is Station {
  if (typeof value !== 'object' || value === null) return false;
  const { pid, port, secret } = value as Record<string, unknown>;
  return Number.isInteger(pid) && Number.isInteger(port) && typeof secret === 'string';
}

function readStation(folder: string): Station | undefined {
  try {
    const station: unknown = JSON.parse(readFileSync(stationFile(folder), 'utf8'));
    return isStation(station) && isAlive(station.pid) ? station : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Leaves word in the data folder, readable by nobody else on this machine. Where that doesn't work,
 * serving goes on: it is only for one more browser.
 */
export function announceStation(folder: string, station: Station): void {
  try {
    rmSync(stationFile(folder), { force: true });
    writeFileSync(stationFile(folder), JSON.stringify(station), { mode: 0o600, flag: 'wx' });
  } catch (error) {
    process.stderr.write(`No other browser can be let in later: ${String(error)}\n`);
  }
}

export function withdrawStation(folder: string): void {
  try {
    rmSync(stationFile(folder), { force: true });
  } catch {
    // It was never announced, and that was told then.
  }
}

/**
 * Asks the server that is running on this folder, if there is one, for the address of another
 * browser. Undefined when nobody answers: what a crash left behind is then of no account.
 */
export async function addressFromStation(folder: string): Promise<string | undefined> {
  const station = readStation(folder);
  if (!station) return undefined;
  try {
    const response = await fetch(`http://127.0.0.1:${station.port}/station`, {
      method: 'POST',
      headers: { authorization: `Bearer ${station.secret}` },
      signal: AbortSignal.timeout(3_000),
    });
    if (!response.ok) return undefined;
    const { address } = (await response.json()) as { address?: unknown };
    // After a crash, somebody else's program may have the port by now.
    const isOurs =
      typeof address === 'string' && address.startsWith(`http://127.0.0.1:${station.port}/?key=`);
    return isOurs ? address : undefined;
  } catch {
    return undefined;
  }
}
