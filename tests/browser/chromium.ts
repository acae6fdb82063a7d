import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

const usual: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  linux: [
    // The same engine without a window's furniture: the tests take half the time in it.
    '/usr/bin/chromium-headless-shell',
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome-stable',
    '/usr/bin/google-chrome',
    '/opt/google/chrome/chrome',
    '/snap/bin/chromium',
  ],
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
  ],
  win32: [
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  ],
};

/** The Chromium named in TAPPET_CHROMIUM, else one of this system, else undefined. */
export function systemChromium(): string | undefined {
  const named = process.env.TAPPET_CHROMIUM;
  if (named) return named;
  return usual[process.platform]?.find((path) => existsSync(path));
}

/** Playwright's own Chromium if it has been downloaded. */
export function playwrightChromium(): string | undefined {
  const path = chromium.executablePath();
  return existsSync(path) ? path : undefined;
}
