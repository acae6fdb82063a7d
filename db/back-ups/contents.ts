import { z } from 'zod';
import { openInThread } from './file-thread.ts';

/** What is in a back-up, for people to tell it by, and to compare with what the store has. */
export interface BackUpContents {
  /** Empty for a shop that was never named. */
  shop: string;
  demo: boolean;
  /** The last thing that was written; null when nothing was. */
  lastEntry: { at: string; by: string; what: string } | null;
  /** Owners on its staff list who are active. */
  owners: { id: string; name: string }[];
  customers: ReadonlySet<string>;
  jobs: ReadonlySet<string>;
  invoices: ReadonlySet<string>;
  payments: ReadonlySet<string>;
  readings: ReadonlySet<string>;
}

const Shops = z.array(z.object({ name: z.string(), demo: z.int() }));
const Entries = z.array(z.object({ at: z.string(), by: z.string(), what: z.string() }));
const Owners = z.array(z.object({ id: z.string(), name: z.string() }));
const Ids = z.array(z.object({ id: z.string() }));

/**
 * Reads a file that {@link checkStoreFile} found sound. It may lack migrations: only what every version of the
 * program has had is asked for.
 */
export async function readContents(file: string): Promise<BackUpContents> {
  const { ask, close } = openInThread(file);
  const idsOf = async (table: string): Promise<ReadonlySet<string>> =>
    new Set(Ids.parse(await ask(`SELECT id FROM "${table}"`)).map(({ id }) => id));
  try {
    const [shop] = Shops.parse(await ask('SELECT name, demo FROM shop'));
    const [lastEntry] = Entries.parse(
      await ask(`SELECT journal.at, coalesce(staff.name, '') AS "by", journal.what FROM journal
        LEFT JOIN staff ON staff.id = journal."by" ORDER BY seq DESC LIMIT 1`),
    );
    return {
      shop: shop?.name ?? '',
      demo: shop?.demo === 1,
      lastEntry: lastEntry ?? null,
      owners: Owners.parse(
        await ask("SELECT id, name FROM staff WHERE role = 'owner' AND active = 1 ORDER BY name"),
      ),
      customers: await idsOf('customer'),
      jobs: await idsOf('job'),
      invoices: await idsOf('invoice'),
      payments: await idsOf('payment'),
      readings: await idsOf('reading'),
    };
  } finally {
    await close();
  }
}
