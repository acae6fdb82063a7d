import { count } from 'drizzle-orm';
import { enterInJournal, verifyJournal } from '../../db/journal.ts';
import { newId } from '../../db/new-id.ts';
import {
  journalEntries,
  lastJournalEntry,
  paperBytes,
  paperCard,
  papersOf,
  shopOf,
  UNNAMED_SHOP,
} from '../../db/queries/office.ts';
import { moneyWritten } from '../../db/queries/till/money-written.ts';
import { shop, staff } from '../../db/schema/index.ts';
import { StaffId } from '../../shared/contract/ids.ts';
import { dateIn } from '../../shared/work/calendar.ts';
import { backUps } from './back-ups/index.ts';
import { os } from './implementer.ts';
import { found } from './refuse.ts';
import { people } from './staff.ts';
import { write } from './writing.ts';

/** There is one shop in a store. */
const ONLY = 1;

const about = os.office.about.handler(({ context: { store, now, program } }) => {
  const { timeZone, demo } = shopOf(store.read);
  const staffed = store.read.select({ n: count() }).from(staff).get()?.n ?? 0;
  return {
    program: 'Tappet',
    version: program.version,
    schema: store.migrations.length,
    dataFolder: store.folder,
    demo,
    firstRun: staffed === 0,
    today: dateIn(timeZone, now()),
    broughtBack: store.exchanges,
    written: lastJournalEntry(store.read),
  };
});

const theShop = os.office.shop.handler(({ context }) => {
  const { demo: _demo, ...facts } = shopOf(context.store.read);
  return facts;
});

const setShop = os.office.setShop.handler(({ input: { by, ...facts }, context, errors, path }) =>
  write(context, path, by, ({ store, staff: { role }, shop: before, note }) => {
    if (role !== 'owner') throw errors.OWNER_WANTED();
    if (facts.currency !== before.currency && moneyWritten(store)) throw errors.CURRENCY_IN_USE();
    store
      .insert(shop)
      .values({ only: ONLY, demo: false, ...facts })
      .onConflictDoUpdate({ target: shop.only, set: facts })
      .run();
    note({ name: facts.name, rounding: facts.rounding, taxBasis: facts.taxBasis });
    return facts;
  }),
);

const openShop = os.office.openShop.handler(({ input, context, errors, path }) =>
  context.store.write((store) => {
    if (store.select({ id: staff.id }).from(staff).limit(1).get()) throw errors.SHOP_OPEN_ALREADY();
    const { ownerName, shopName, ...place } = input;
    const now = context.now();
    const owner = {
      id: newId(now),
      name: ownerName,
      role: 'owner' as const,
      active: true,
    };
    store.insert(staff).values(owner).run();
    store
      .insert(shop)
      .values({ ...UNNAMED_SHOP, ...place, only: ONLY, name: shopName, demo: false })
      .run();
    enterInJournal(store, {
      at: now.toISOString(),
      by: owner.id,
      what: path.join('.'),
      detail: { shop: shopName, owner: owner.id },
    });
    return { ...owner, id: StaffId.parse(owner.id) };
  }),
);

const papers = os.office.papers.handler(({ input, context }) =>
  papersOf(context.store.read, input.jobId),
);

const paper = os.office.paper.handler(({ input, context: { store } }) => {
  const card = found(paperCard(store.read, input.id), 'paper');
  const { content, pdf, pdfSha256 } = found(paperBytes(store.read, input.id), 'paper');
  return { ...card, content, pdf: pdf.toString('base64'), pdfSha256 };
});

const journal = os.office.journal.handler(({ input, context }) =>
  journalEntries(context.store.read, input.limit),
);

const verify = os.office.verifyJournal.handler(({ context }) => verifyJournal(context.store.read));

export const office = {
  about,
  shop: theShop,
  setShop,
  openShop,
  ...people,
  papers,
  paper,
  journal,
  verifyJournal: verify,
  ...backUps,
};
