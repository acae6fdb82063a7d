import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { enterInJournal, type JournalFacts } from '../journal.ts';
import type { Migration } from '../migrations.ts';
import { StoreRefusal } from '../refusal.ts';
import { openStore } from '../store.ts';
import { troubleOf } from '../trouble.ts';
import { type CopiedFile, copyFileTo, syncFile } from './files.ts';
import { backUpFolder, stageFolder } from './folders.ts';
import { BackUpTrouble, type Tell } from './trouble.ts';

export interface StagedFile extends CopiedFile {
  file: string;
  drop: () => void;
}

/** Copies a file into a folder of its own: what is then checked is what will be put in place. */
export async function stageFile(
  dataFolder: string,
  source: string,
  tell: Tell,
): Promise<StagedFile> {
  mkdirSync(stageFolder(dataFolder), { recursive: true });
  const folder = mkdtempSync(join(stageFolder(dataFolder), 'file-'));
  const file = join(folder, 'tappet.db');
  const drop = () => rmSync(folder, { recursive: true, force: true });
  try {
    return { ...(await copyFileTo(source, file, tell)), file, drop };
  } catch (error) {
    drop();
    throw error;
  }
}

/**
 * Brings a staged file up to this program's version, enters in its journal that it was brought back, and
 * closes it, all on the disk.
 * @throws BackUpTrouble UPDATE_FAILED
 */
export function makeReady(
  dataFolder: string,
  { file }: StagedFile,
  migrations: readonly Migration[],
  entry: JournalFacts,
): void {
  try {
    const store = openStore(dirname(file), { migrations, backUps: backUpFolder(dataFolder) });
    try {
      store.write((writing) => enterInJournal(writing, entry));
    } finally {
      store.close();
    }
  } catch (error) {
    if (!(error instanceof StoreRefusal) || troubleOf(error) !== undefined) throw error;
    throw new BackUpTrouble('UPDATE_FAILED', { cause: error });
  }
  syncFile(file);
}
