import { existsSync, mkdtempSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { provideDataFolder } from '../../db/data-folder.ts';
import { openStore, type StoreOptions, storeFile } from '../../db/store.ts';
import { type DeskContext, endWork } from '../desk/index.ts';
import { drawPaper } from '../paper/index.ts';
import { type CallGate, createCallGate } from './call-gate.ts';
import { withDailyBackUps } from './daily-back-ups.ts';
import { isAlive } from './is-alive.ts';

/** The open shop: its store, the context that every call gets, and the gate that calls pass. */
export type DeskSession = {
  context: DeskContext;
  gate: CallGate;
  /** Waits for the calls in flight, then closes the store. Safe to call more than once. */
  close: () => Promise<void>;
};

/** `now` is the machine's clock unless another is told. */
export type DeskOptions = Pick<StoreOptions, 'careless' | 'now'>;

/**
 * Opens the data folder.
 * @throws StoreRefusal when the file is not ours, is newer than this program, or is in use
 */
export function openDesk(folder: string, version: string, options: DeskOptions = {}): DeskSession {
  const now = options.now ?? (() => new Date());
  const store = openStore(folder, { ...options, now });
  const gate = createCallGate();
  let closing: Promise<void> | undefined;
  return {
    context: { store, now, drawPaper, program: { version }, alone: gate.alone },
    gate,
    close() {
      closing ??= gate.drain().then(async (left) => {
        await endWork(store);
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
  options: DeskOptions = {},
): Promise<DeskSession> {
  if (demo) await provideDemoShop(folder, version, options);
  return withDailyBackUps(openDesk(folder, version, options));
}

/**
 * Fills a store aside and puts it in its place when it is complete: whoever loses patience and
 * stops the program never finds half a shop at the next start.
 */
async function provideDemoShop(
  folder: string,
  version: string,
  options: DeskOptions,
): Promise<void> {
  provideDataFolder(folder);
  clearAway(folder);
  const place = storeFile(folder);
  if (existsSync(place)) return;
  const aside = mkdtempSync(join(folder, `${filling}${process.pid}-`));
  try {
    const session = openDesk(aside, version, { ...options, careless: true });
    try {
      await fill(session);
    } finally {
      await session.close();
    }
    if (!existsSync(place)) renameSync(session.context.store.file, place);
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
}

/** What is being filled lies in a folder with this and the number of the process in its name. */
const filling = 'filling-';

/** Removes what those left behind who were stopped while they filled a shop. */
function clearAway(folder: string): void {
  for (const name of readdirSync(folder)) {
    const pid = /^filling-(\d+)-/.exec(name)?.[1];
    if (pid && !isAlive(Number(pid))) rmSync(join(folder, name), { recursive: true, force: true });
  }
}

async function fill({ context }: DeskSession): Promise<void> {
  process.stderr.write('Filling the invented shop. This takes a moment, this once.\n');
  const { fillDemoShop } = await import('../command/fill-demo-shop.ts');
  await fillDemoShop(context);
}
