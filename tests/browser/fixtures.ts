import { test as base } from '@playwright/test';
import { type RunningServer, sessionCookieFrom, startServer } from './server.ts';

export type ServerOptions = {
  /** `test.use({ shop: 'demo' })` at the top of a file serves the invented shop. */
  shop: 'demo' | 'empty';
};

type WorkerFixtures = ServerOptions & {
  server: RunningServer;
  session: { name: string; value: string };
};

/**
 * One server for each worker and kind of shop, on a fresh data folder, stopped by its own process
 * id. `page` is past the key already: `page.goto('/')` shows the start page. Tests of one worker
 * share a store, so each makes the records that it needs.
 */
export const test = base.extend<object, WorkerFixtures>({
  shop: ['empty', { option: true, scope: 'worker' }],
  server: [
    async ({ shop }, use) => {
      const server = await startServer(shop);
      await use(server);
      await server.stop();
    },
    { scope: 'worker', timeout: 240_000 },
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
  storageState: async ({ server, session }, use) => {
    await use({
      cookies: [
        {
          ...session,
          domain: new URL(server.origin).hostname,
          path: '/',
          expires: -1,
          httpOnly: true,
          secure: false,
          sameSite: 'Strict',
        },
      ],
      origins: [],
    });
  },
});

export { expect } from '@playwright/test';
