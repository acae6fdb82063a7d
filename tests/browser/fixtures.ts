import { type BrowserContext, type BrowserContextOptions, test as base } from '@playwright/test';
import { type RunningServer, sessionCookieFrom, startServer } from './server.ts';
import { tellTime } from './told-time.ts';

export type ServerOptions = {
  /** `test.use({ shop: 'demo' })` at the top of a file serves the invented shop. */
  shop: 'demo' | 'empty';
};

type WorkerFixtures = ServerOptions & {
  server: RunningServer;
  session: { name: string; value: string };
  /** Those that are open in this worker: one for fingers and one for a mouse. */
  contexts: Map<string, BrowserContext>;
};

type TestFixtures = {
  /** A context of its own, without key and drafts, at the told time; closed after the test. */
  openContext: (options?: BrowserContextOptions) => Promise<BrowserContext>;
};

/**
 * One server for each worker and kind of shop, on a fresh data folder, stopped by its own process
 * id. `page` is past the key already: `page.goto('/')` shows the start page. Tests of one worker
 * share a store, so each makes the records that it needs.
 *
 * They share a context too, since to make one costs more than to open a page: each test gets a page of its
 * own, with nothing that the one before it had kept in the browser.
 */
export const test = base.extend<TestFixtures, WorkerFixtures>({
  shop: ['empty', { option: true, scope: 'worker' }],
  server: [
    async ({ shop }, use) => {
      const server = await startServer(shop);
      await use(server);
      await server.stop();
    },
    { scope: 'worker', timeout: 600_000 },
  ],
  session: [
    async ({ server }, use) => {
      await use(await sessionCookieFrom(server.address));
    },
    { scope: 'worker' },
  ],
  baseURL: async ({ server }, use) => {
    await use(server.origin);
  },
  contexts: [
    async ({ browser }, use) => {
      const contexts = new Map<string, BrowserContext>();
      await use(contexts);
      for (const context of contexts.values()) await context.close();
      if (browser.contexts().length > 0) throw new Error('A test left a context open.');
    },
    { scope: 'worker' },
  ],
  context: async ({ browser, contexts, hasTouch, server, session }, use) => {
    const kind = `${server.origin} ${hasTouch}`;
    const context = contexts.get(kind) ?? (await browser.newContext());
    if (!contexts.has(kind)) {
      contexts.set(kind, context);
      await context.addCookies([{ ...session, url: server.origin, sameSite: 'Strict' }]);
      await tellTime(context);
    }
    await use(context);
  },
  page: async ({ context, server, viewport }, use) => {
    const page = await context.newPage();
    const browser = await context.newCDPSession(page);
    const nothing = { origin: server.origin, storageTypes: 'local_storage' };
    await browser.send('Storage.clearDataForOrigin', nothing);
    await browser.detach();
    if (viewport !== null) await page.setViewportSize(viewport);
    await use(page);
    await page.close();
  },
  openContext: async ({ browser }, use) => {
    const opened: BrowserContext[] = [];
    await use(async (options) => {
      const context = await browser.newContext(options);
      opened.push(context);
      await tellTime(context);
      return context;
    });
    for (const context of opened) await context.close();
  },
});

export { expect } from '@playwright/test';
