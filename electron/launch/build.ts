import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildMain } from './build-main.ts';
import { fingerprint } from './fingerprint.ts';
import { programRoot } from './root.ts';

type Product = {
  name: 'renderer' | 'electron';
  sources: readonly string[];
  make: (outFolder: string) => Promise<void>;
};

const products: Record<Product['name'], Product> = {
  renderer: {
    name: 'renderer',
    sources: ['renderer', 'shared', 'vite.config.ts', 'package-lock.json'],
    make: buildRenderer,
  },
  electron: {
    name: 'electron',
    sources: ['electron', 'db', 'shared', 'package-lock.json'],
    make: (outFolder) => buildMain(programRoot, outFolder),
  },
};

async function buildRenderer(outFolder: string): Promise<void> {
  const { build } = await import('vite');
  await build({
    configFile: join(programRoot, 'vite.config.ts'),
    logLevel: 'warn',
    build: { outDir: outFolder },
  });
}

/**
 * Builds into dist/ what its sources have outgrown.
 * @returns whether there was anything to do
 */
export async function buildIfChanged(name: Product['name']): Promise<boolean> {
  const { sources, make } = products[name];
  const dist = join(programRoot, 'dist');
  const stamp = join(dist, `${name}.sha256`);
  const now = fingerprint(programRoot, sources);
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === now && existsSync(join(dist, name))) {
    return false;
  }
  // Made beside the old one and then put in its place, so that a program that is being served
  // at this moment never sees half of it.
  const fresh = join(dist, `${name}.new-${process.pid}`);
  const old = join(dist, `${name}.old-${process.pid}`);
  mkdirSync(dist, { recursive: true });
  try {
    await make(fresh);
  } catch (error) {
    rmSync(fresh, { recursive: true, force: true });
    throw error;
  }
  rmSync(stamp, { force: true });
  if (existsSync(join(dist, name))) renameSync(join(dist, name), old);
  renameSync(fresh, join(dist, name));
  writeFileSync(stamp, now);
  rmSync(old, { recursive: true, force: true });
  return true;
}
