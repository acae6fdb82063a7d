import { customer } from '../../db/schema/index.ts';
import { openStore } from '../../db/store.ts';
import type { DeskContext } from '../desk/index.ts';
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
export function openDesk(folder: string, version: string): DeskSession {
  const store = openStore(folder);
  const gate = createCallGate();
  let closing: Promise<void> | undefined;
  return {
    context: { store, now: () => new Date(), program: { version } },
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

/** Somebody's own shop is never mixed with the invented one. */
function hasCustomers({ store }: DeskContext): boolean {
  return store.read.select({ id: customer.id }).from(customer).limit(1).all().length > 0;
}

/** Opens the data folder and, for the demo, fills it with the invented shop if it is empty. */
export async function openDeskFor(
  { folder, demo }: { folder: string; demo: boolean },
  version: string,
): Promise<DeskSession> {
  const session = openDesk(folder, version);
  if (!demo || hasCustomers(session.context)) return session;
  try {
    process.stderr.write('Filling the invented shop. This takes a moment, this once.\n');
    const { fillDemoShop } = await import('../../db/demo/index.ts');
    await fillDemoShop(session.context);
    return session;
  } catch (error) {
    await session.close();
    throw error;
  }
}
