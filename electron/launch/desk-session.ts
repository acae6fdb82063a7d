import { existsSync, mkdirSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { openStore, type StoreOptions } from '../../db/store.ts';
import type { DeskContext } from '../desk/index.ts';
import { drawPaper } from '../paper/index.ts';
import { type CallGate, createCallGate } from './call-gate.ts';

/** The open shop: its store, the context that every call gets, and the gate that calls pass. */
export type DeskSession = {
  context: DeskContext;
  gate: CallGate;
  /** Waits for the calls in flight, then closes the store. Safe to call more than once. */
  close: () => Promise<void>;
};

/**
 * Opens the data folder.
 * @throws StoreRefusal when the file is not ours, is newer than this program, or is in use
 */
export function openDesk(
  folder: string,
  version: string,
  options: Pick<StoreOptions, 'careless'> = {},
): DeskSession {
  const store = openStore(folder, options);
  const gate = createCallGate();
  let closing: Promise<void> | undefined;
  return {
    context: { store, now: () => new Date(), drawPaper, program: { version } },
    gate,
    close() {
      closing ??= gate.drain().then((left) => {
        store.close();
        if (left > 0) process.stderr.write(`${left} calls were cut off while Tappet closed.\n`);
      });
      return closing;
    },
  };
}

/**
 * Opens the data folder; for the demo, the invented shop is there when it opens. A store with
 * somebody's own shop in it is opened as it is.
 */
export async function openDeskFor(
  { folder, demo }: { folder: string; demo: boolean },
  version: string,
): Promise<DeskSession> {
  if (demo) await provideDemoShop(folder, version);
  return openDesk(folder, version);
}

/**
 * Fills a store aside and puts it in its place when it is complete: whoever loses patience and
 * stops the program never finds half a shop at the next start.
 */
async function provideDemoShop(folder: string, version: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const aside = mkdtempSync(join(folder, 'filling-'));
  try {
    const session = openDesk(aside, version, { careless: true });
    const { file } = session.context.store;
    const place = join(folder, basename(file));
    const isWanted = !existsSync(place);
    try {
      if (isWanted) await fill(session);
    } finally {
      await session.close();
    }
    if (isWanted && !existsSync(place)) renameSync(file, place);
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
}

async function fill({ context }: DeskSession): Promise<void> {
  process.stderr.write('Filling the invented shop. This takes a moment, this once.\n');
  const { fillDemoShop } = await import('../command/fill-demo-shop.ts');
  await fillDemoShop(context);
}
