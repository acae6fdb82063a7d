import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { MIGRATIONS } from './migrations.ts';

/**
 * `npm run migration -- NAME`: lets drizzle-kit write the next migration from the schema, then makes its
 * tables STRICT, which drizzle-kit can't say. `npm run migration -- NAME --custom` gives an empty one.
 */
const [name, ...flags] = process.argv.slice(2);
if (name === undefined || !/^[a-z_]+$/.test(name)) {
  console.error(
    'Give the migration a name in small letters, for example: npm run migration -- add_photos',
  );
  process.exit(2);
}
const before = new Set(readdirSync(MIGRATIONS));
execFileSync('drizzle-kit', ['generate', '--name', name, ...flags], { stdio: 'inherit' });
for (const file of readdirSync(MIGRATIONS)) {
  if (before.has(file) || !file.endsWith('.sql')) continue;
  const path = join(MIGRATIONS, file);
  const sql = readFileSync(path, 'utf8').replace(
    /(CREATE TABLE [\s\S]*?\n\));/g,
    (_all, table: string) => `${table} STRICT;`,
  );
  writeFileSync(path, sql);
}
