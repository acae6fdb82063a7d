import { readFile, realpath, stat } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';

export type PageFile = {
  bytes: Uint8Array<ArrayBuffer>;
  type: string;
  /** Built files carry their hash in the name and never change; the page itself must be asked for. */
  cache: string;
};

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.map': 'application/json',
  '.mjs': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
};

/**
 * The path below the folder of built files that a URL path means, or undefined if it leaves that
 * folder or makes no sense.
 */
export function safeRelativePath(urlPath: string): string | undefined {
  let decoded: string;
  try {
    decoded = decodeURIComponent(urlPath);
  } catch {
    return undefined;
  }
  if (!decoded.startsWith('/') || /[\\\0:]/.test(decoded)) return undefined;
  const parts = decoded.split('/').filter((part) => part !== '');
  if (parts.some((part) => part.startsWith('.'))) return undefined;
  return parts.join('/');
}

async function fileInside(folder: string, path: string): Promise<string | undefined> {
  try {
    const [root, file] = await Promise.all([realpath(folder), realpath(join(folder, path))]);
    if (!file.startsWith(root + sep)) return undefined;
    return (await stat(file)).isFile() ? file : undefined;
  } catch {
    return undefined;
  }
}

/**
 * The file for a URL path. A path without an extension is a screen of the one page, which routes
 * for itself; a path with one that is not there is undefined (not found).
 */
export async function pageFile(folder: string, urlPath: string): Promise<PageFile | undefined> {
  const path = safeRelativePath(urlPath);
  if (path === undefined) return undefined;
  const isScreen = extname(path) === '';
  const file = await fileInside(folder, isScreen ? 'index.html' : path);
  if (file === undefined) return undefined;
  return {
    bytes: new Uint8Array(await readFile(file)),
    type: types[extname(file)] ?? 'application/octet-stream',
    cache: path.startsWith('assets/') ? 'public, max-age=31536000, immutable' : 'no-store',
  };
}
