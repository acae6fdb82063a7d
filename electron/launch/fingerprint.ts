import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';

function filesUnder(path: string): string[] {
  if (!existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesUnder(join(path, name)));
}

/** SHA-256 over names and content of everything under these paths; a missing path counts as empty. */
export function fingerprint(root: string, paths: readonly string[]): string {
  const hash = createHash('sha256');
  for (const file of paths.flatMap((path) => filesUnder(join(root, path)))) {
    const content = readFileSync(file);
    hash.update(`${relative(root, file)}\0${content.length}\0`).update(content);
  }
  return hash.digest('hex');
}
