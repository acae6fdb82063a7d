import { z } from 'zod';
import { isNewStore } from '../identity.ts';
import { followsOn } from '../journal.ts';
import { APPLIED, HAS_MIGRATIONS, PIECES, pendingAfter, piecesAfter } from '../migrate.ts';
import type { Migration } from '../migrations.ts';
import { StoreRefusal } from '../refusal.ts';
import { openInThread } from './file-thread.ts';
import { BackUpTrouble, type Tell } from './trouble.ts';

/** A store file that was found to be whole, and ours. */
export interface SoundFile {
  /** How many migrations it lacks: opened as the store, it is brought up to this program's version. */
  pending: number;
  /** The hash of each entry of its journal, from the first. */
  journal: string[];
}

/** Entries of the journal that are read at a time. */
const AT_A_TIME = 2000;

/** Of the whole check, so much is done after SQLite's own part: the journal is the rest. */
const AFTER_INTEGRITY = 0.7;

/**
 * Reads a store file through, whatever it is, and changes nothing in it: whether it is ours and not from a
 * newer program, SQLite's integrity check, foreign keys, and the chain of its journal. Nobody else may have
 * the file open.
 * @throws BackUpTrouble NOT_OURS, NEWER_PROGRAM, MIGRATIONS_DIFFER, DAMAGED, JOURNAL_BROKEN
 */
export async function checkStoreFile(
  file: string,
  known: readonly Migration[],
  tell: Tell,
): Promise<SoundFile> {
  try {
    if (isNewStore(file)) throw new BackUpTrouble('NOT_OURS');
  } catch (error) {
    throw error instanceof StoreRefusal ? new BackUpTrouble('NOT_OURS', { cause: error }) : error;
  }
  const thread = openInThread(file);
  const ask = async (sql: string): Promise<unknown[]> => {
    try {
      return await thread.ask(sql);
    } catch (cause) {
      throw new BackUpTrouble('DAMAGED', { cause, detail: String(cause) });
    }
  };
  try {
    const pending = await pendingIn(ask, known);
    tell(0.1);
    await demandIntegrity(ask);
    tell(AFTER_INTEGRITY);
    return { pending, journal: await chainIn(ask, tell) };
  } finally {
    await thread.close();
  }
}

type Ask = (sql: string) => Promise<unknown[]>;

const Applied = z.array(z.object({ tag: z.string(), sha256: z.string() }));
const Pieces = z.array(z.object({ piece: z.string() }));

async function pendingIn(ask: Ask, known: readonly Migration[]): Promise<number> {
  if ((await ask(HAS_MIGRATIONS)).length === 0) throw new BackUpTrouble('NOT_OURS');
  const applied = Applied.parse(await ask(APPLIED));
  try {
    const pending = pendingAfter(applied, known).length;
    const pieces = Pieces.parse(await ask(PIECES)).map(({ piece }) => piece);
    // A trigger of somebody else's would work on our data; one of ours that is gone no longer guards it.
    if (pieces.join() !== piecesAfter(known.slice(0, applied.length)).join())
      throw new BackUpTrouble('MIGRATIONS_DIFFER');
    return pending;
  } catch (error) {
    if (!(error instanceof StoreRefusal)) throw error;
    const code = error.code === 'NEWER_PROGRAM' ? error.code : 'MIGRATIONS_DIFFER';
    throw new BackUpTrouble(code, { cause: error });
  }
}

const Integrity = z.array(z.object({ integrity_check: z.string() }));

async function demandIntegrity(ask: Ask): Promise<void> {
  const [first] = Integrity.parse(await ask('PRAGMA integrity_check(1)'));
  if (first?.integrity_check !== 'ok')
    throw new BackUpTrouble('DAMAGED', { detail: first?.integrity_check });
  const orphans = await ask('PRAGMA foreign_key_check');
  if (orphans.length > 0)
    throw new BackUpTrouble('DAMAGED', { detail: `${orphans.length} rows point nowhere` });
}

const Entries = z.array(
  z.object({
    seq: z.int(),
    at: z.string(),
    by: z.string(),
    what: z.string(),
    detail: z.string(),
    previous: z.string(),
    hash: z.string(),
  }),
);

async function chainIn(ask: Ask, tell: Tell): Promise<string[]> {
  const [{ n }] = z
    .tuple([z.object({ n: z.int() })])
    .parse(await ask('SELECT count(*) AS n FROM journal'));
  const hashes: string[] = [];
  let before: z.infer<typeof Entries>[number] | null = null;
  while (hashes.length < n) {
    const entries = Entries.parse(
      await ask(
        `SELECT * FROM journal WHERE seq > ${hashes.length} ORDER BY seq LIMIT ${AT_A_TIME}`,
      ),
    );
    if (entries.length === 0) throw new BackUpTrouble('JOURNAL_BROKEN');
    for (const entry of entries) {
      if (!followsOn(entry, before))
        throw new BackUpTrouble('JOURNAL_BROKEN', { detail: `entry ${entry.seq}` });
      before = entry;
      hashes.push(entry.hash);
    }
    tell(AFTER_INTEGRITY + (1 - AFTER_INTEGRITY) * (hashes.length / n));
  }
  return hashes;
}
