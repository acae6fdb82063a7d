import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

/** The folder of the program itself: package.json, dist/, node_modules/. */
export const programRoot = resolve(import.meta.dirname, '..', '..');

/** The version in package.json. */
export function programVersion(): string {
  const text = readFileSync(join(programRoot, 'package.json'), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}
