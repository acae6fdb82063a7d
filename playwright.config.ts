import { defineConfig, devices } from '@playwright/test';
import { systemChromium } from './tests/browser/chromium.ts';
import type { ServerOptions } from './tests/browser/fixtures.ts';
import { TIME_ZONE } from './tests/browser/told-time.ts';

const quietBrowser = [
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-gpu',
  // The tests of a worker show one site: one process goes on with what it has compiled of it.
  '--renderer-process-limit=1',
];
// Chromium's sandbox refuses to work for root, as which containers usually run.
const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : [];

export default defineConfig<object, ServerOptions>({
  testDir: 'tests/browser',
  outputDir: 'test-results/browser',
  globalSetup: './tests/browser/build.ts',
  fullyParallel: true,
  forbidOnly: true,
  retries: 0,
  workers: 2,
  // Long enough for a machine that is busy with other work: only what fails waits for it.
  timeout: 180_000,
  expect: { timeout: 30_000 },
  reporter: [['list'], ['json', { outputFile: 'test-results/browser.json' }]],
  use: {
    ...devices['Desktop Chrome'],
    viewport: { width: 1280, height: 800 },
    locale: 'en-US',
    timezoneId: TIME_ZONE,
    // Recording every test takes a quarter of their time: TRACE=1 asks for it when one has to be found out.
    trace: process.env.TRACE ? 'retain-on-failure' : 'off',
    contextOptions: { reducedMotion: 'reduce' },
    launchOptions: {
      executablePath: systemChromium(),
      args: [...quietBrowser, ...asRoot],
      // A clock that is put before the machine's by a library (faketime) stops Chromium.
      env: { ...process.env, LD_PRELOAD: '' },
    },
  },
  projects: [
    { name: 'browser', testIgnore: 'electron.spec.ts' },
    { name: 'electron', testMatch: 'electron.spec.ts' },
  ],
});
