import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { z } from 'zod';

/** The migrations that this program knows, in order, as drizzle-kit wrote them. */

export const MIGRATIONS = fileURLToPath(new URL('./migrations', import.meta.url));

export interface Migration {
  tag: string;
  sha256: string;
  statements: string[];
}

const Journal = z.object({ entries: z.array(z.object({ idx: z.int(), tag: z.string() })) });

/** @throws Error when the folder's list has a gap: that is a mistake of ours, not of the user's. */
export function knownMigrations(folder = MIGRATIONS): Migration[] {
  const { entries } = Journal.parse(
    JSON.parse(readFileSync(join(folder, 'meta', '_journal.json'), 'utf8')),
  );
  return entries.map(({ idx, tag }, position) => {
    if (idx !== position) throw new Error(`Migration ${tag} is out of order.`);
    const sql = readFileSync(join(folder, `${tag}.sql`), 'utf8');
    return {
      tag,
      sha256: createHash('sha256').update(sql).digest('hex'),
      statements: sql
        .split('--> statement-breakpoint')
        .map((statement) => statement.trim())
        // A pragma of foreign keys does nothing inside a transaction; the runner sees to it outside.
        .filter((statement) => statement !== '' && !/^PRAGMA foreign_keys/i.test(statement)),
    };
  });
}
