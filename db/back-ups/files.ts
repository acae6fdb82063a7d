import { createHash } from 'node:crypto';
import { closeSync, createReadStream, fsyncSync, openSync, statSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { pipeline } from 'node:stream/promises';
import type { Tell } from './trouble.ts';

const AT_A_TIME = 4 * 1024 * 1024;

/** What was written reaches the disk before anything that follows. */
export function syncFile(path: string): void {
  const handle = openSync(path, 'r+');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** So that a new name in a folder outlives a power cut. Windows has no such call and needs none. */
export function syncFolder(path: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(path, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** Hexadecimal. */
export async function sha256Of(path: string): Promise<string> {
  const hash = createHash('sha256');
  await pipeline(createReadStream(path, { highWaterMark: AT_A_TIME }), hash);
  return hash.digest('hex');
}

export interface CopiedFile {
  bytes: number;
  /** Of the very bytes that were copied, hexadecimal. */
  sha256: string;
}

/** Copies a file piece by piece; between them others get their turn. */
export async function copyFileTo(source: string, target: string, tell: Tell): Promise<CopiedFile> {
  const size = Math.max(1, statSync(source).size);
  const hash = createHash('sha256');
  const piece = Buffer.alloc(AT_A_TIME);
  const from = await open(source, 'r');
  try {
    const to = await open(target, 'wx');
    try {
      let bytes = 0;
      for (;;) {
        const { bytesRead } = await from.read(piece, 0, AT_A_TIME, bytes);
        if (bytesRead === 0) return { bytes, sha256: hash.digest('hex') };
        hash.update(piece.subarray(0, bytesRead));
        await to.writeFile(piece.subarray(0, bytesRead));
        bytes += bytesRead;
        tell(Math.min(1, bytes / size));
      }
    } finally {
      await to.close();
    }
  } finally {
    await from.close();
  }
}
